package wetside.browser;

/** What somebody sits before. Widths are those of the layout: at 200 % a desk of 1280 is 640 wide. */
enum Screen {
    DESK(1280, 800, 1, false),
    TABLET(820, 1180, 1, true),
    PHONE(390, 844, 1, true),
    ZOOMED(640, 400, 2, false);

    final int width;
    final int height;
    final int scale;
    final boolean touch;

    Screen(int width, int height, int scale, boolean touch) {
        this.width = width;
        this.height = height;
        this.scale = scale;
        this.touch = touch;
    }
}
