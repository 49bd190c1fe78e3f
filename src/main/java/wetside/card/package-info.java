/**
 * Part cards: one part of one machine where it stands. What it is for, how to know it from its nearest look-alike, how it
 * fails and what shows that, how it is tested and what it should read, what it is set to, which part number each making has,
 * and how to get at it.
 *
 * <p>Words come from the kind and the machine file; every reading is the twin's, every way in the cabinet's. A card knows who
 * reads it: an owner's leads nowhere inside the case. Start at {@link wetside.card.Cards}; {@link wetside.card.CardSheet}
 * puts a card on paper.
 */
package wetside.card;
