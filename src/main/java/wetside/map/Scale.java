package wetside.map;

/** Colours for heat and pressure, between the design's fixed points; thickness for pressure. */
enum Scale {
    PRESSURE(
            new double[] {0, 1, 3, 6, 9, 12},
            new int[] {0xDAE5EC, 0xAFC8DC, 0x7AA3C9, 0x4779AD, 0x245186, 0x112E58},
            "bar"),
    TEMPERATURE(
            new double[] {20, 60, 90, 100, 125, 140},
            new int[] {0x5C7F9E, 0x8FA9A8, 0xCDB878, 0xDD8E46, 0xBC4A2C, 0x7A1E2C},
            "°C");

    final double[] points;
    final String unit;
    private final int[] colours;

    Scale(double[] points, int[] colours, String unit) {
        this.points = points;
        this.colours = colours;
        this.unit = unit;
    }

    static Scale of(Measured.Quantity quantity) {
        return quantity == Measured.Quantity.PRESSURE ? PRESSURE : TEMPERATURE;
    }

    String colour(double value) {
        if (value <= points[0]) {
            return hex(colours[0]);
        }
        for (int i = 1; i < points.length; i++) {
            if (value <= points[i]) {
                return hex(mixed(colours[i - 1], colours[i], (value - points[i - 1]) / (points[i] - points[i - 1])));
            }
        }
        return hex(colours[colours.length - 1]);
    }

    private static int mixed(int a, int b, double share) {
        int sum = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int from = a >> shift & 0xff;
            int to = b >> shift & 0xff;
            sum |= (int) Math.round(from + share * (to - from)) << shift;
        }
        return sum;
    }

    private static String hex(int colour) {
        return String.format("#%06X", colour);
    }

    /** Pressure thickens a line; heat does not. */
    double thickness(double value) {
        double share = Math.max(0, Math.min(1, value / points[points.length - 1]));
        return this == PRESSURE ? 1.5 + 3.5 * share : 3;
    }
}
