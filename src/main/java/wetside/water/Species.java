package wetside.water;

/** A form in which something is dissolved. */
public enum Species {
    H(1),
    OH(-1),
    CA(2),
    MG(2),
    NA(1),
    K(1),
    CL(-1),
    SO4(-2),
    NO3(-1),
    CO3(-2),
    HCO3(-1),
    CO2(0),
    CAHCO3(1),
    CACO3(0),
    CASO4(0),
    CAOH(1),
    MGHCO3(1),
    MGCO3(0),
    MGSO4(0),
    MGOH(1),
    NAHCO3(0),
    NACO3(-1),
    NASO4(-1),
    KSO4(-1),
    HSO4(-1),
    H4SIO4(0),
    H3SIO4(-1);

    static final Species[] ALL = values();

    private final int charge;

    Species(int charge) {
        this.charge = charge;
    }

    public int charge() {
        return charge;
    }
}
