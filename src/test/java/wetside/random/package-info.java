/**
 * Random machines: files made up from the kinds there are, joined the way machines are, that must read, run and keep their
 * books whatever is in them. {@link wetside.random.RandomMachine} makes the text; whoever draws or prints machines can try the
 * same ones. A new kind needs nothing here: kinds no motif knows are hung on as spare parts.
 */
package wetside.random;
