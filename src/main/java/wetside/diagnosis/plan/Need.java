package wetside.diagnosis.plan;

import java.util.Arrays;

/** Which repair is the one needed, from how likely the causes in play are. */
final class Need {
    private static final double PER_NAT = 1 / Math.log(2);

    private final int[] repairOf;
    private final int repairs;
    /** Repairs that more than one cause in play asks for; the last place is for what no repair mends. */
    private final boolean[] shared;

    private final double[] sums;

    Need(RepairPlan plan, int causes) {
        repairs = plan.repairs().size();
        repairOf = new int[causes];
        shared = new boolean[repairs + 1];
        boolean[] seen = new boolean[repairs + 1];
        for (int a = 0; a < causes; a++) {
            repairOf[a] = plan.repairOf(a) < 0 ? repairs : plan.repairOf(a);
            shared[repairOf[a]] = seen[repairOf[a]];
            seen[repairOf[a]] = true;
        }
        sums = new double[repairs + 1];
    }

    /** Place of what none of the repairs mends. */
    int none() {
        return repairs;
    }

    /** Probability that each repair is the one needed; last, that none of them is. */
    void of(double[] shares, double[] into) {
        Arrays.fill(into, 0);
        for (int a = 0; a < shares.length; a++) {
            into[repairOf[a]] += shares[a];
        }
    }

    /** How much there is still to know. */
    Outlook.Doubt doubt(double[] shares) {
        Arrays.fill(sums, 0);
        double cause = 0;
        double single = 0;
        for (int a = 0; a < shares.length; a++) {
            if (shares[a] > 0) {
                double nats = shares[a] * Math.log(shares[a]);
                cause -= nats;
                single -= shared[repairOf[a]] ? 0 : nats;
                sums[repairOf[a]] += shares[a];
            }
        }
        double repair = single;
        for (int r = 0; r <= repairs; r++) {
            repair -= shared[r] && sums[r] > 0 ? sums[r] * Math.log(sums[r]) : 0;
        }
        return new Outlook.Doubt(Math.max(0, cause * PER_NAT), Math.max(0, repair * PER_NAT));
    }

    /** Bits about the cause that are left to whoever takes over, when only the repair needed is known. */
    double handedOver(double[] shares) {
        double nats = 0;
        double none = 0;
        for (int a = 0; a < shares.length; a++) {
            if (repairOf[a] == repairs && shares[a] > 0) {
                nats -= shares[a] * Math.log(shares[a]);
                none += shares[a];
            }
        }
        return Math.max(0, (nats + (none > 0 ? none * Math.log(none) : 0)) * PER_NAT);
    }
}
