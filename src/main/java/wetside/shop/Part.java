package wetside.shop;

/**
 * A part on the shelf, by the number machine files name it with.
 *
 * @param onHand  how many are there
 * @param minimum how many should be
 * @param price   for one, null when nobody has said
 */
public record Part(
        long id,
        String number,
        String name,
        String kind,
        String shelf,
        long onHand,
        long minimum,
        long onOrder,
        Double price,
        long version) {}
