package wetside.water;

/** What can fall out. */
public enum Mineral {
    CALCITE,
    ARAGONITE,
    GYPSUM,
    ANHYDRITE,
    AMORPHOUS_SILICA
}
