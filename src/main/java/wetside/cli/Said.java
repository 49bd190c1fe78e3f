package wetside.cli;

import java.util.Locale;

/**
 * One line typed into the dialogue: a word it knows, and what the word is about; everything else is an answer.
 *
 * @param rest what follows the word; for an answer, all of it
 */
record Said(Word word, String rest) {

    /** What the dialogue can be told. Where one begins like another, the longer stands first. */
    enum Word {
        NOTHING("", ""),
        STILL_BAD("still bad", "the repair did not help"),
        FIXED("fixed", "the repair helped: the proof, and the end"),
        UNDO("undo", "take the last answer back"),
        WHY_NOT("why not", "CAUSE: what speaks against it"),
        WHY("why", "why this step; why CAUSE: what speaks for it"),
        LIST("list", "all readings still open; list WORD: those with the word in them"),
        ASK("ask", "READING, or its number in the list: go there"),
        KNOWN("known", "what has been found so far"),
        CAUSES("causes", "the causes again"),
        HELP("help", "this"),
        QUIT("quit", "the end; Ctrl-D does the same"),
        ANSWER("", "");

        final String phrase;
        final String means;

        Word(String phrase, String means) {
            this.phrase = phrase;
            this.means = means;
        }
    }

    /** @param line as typed, or null at the end of input */
    static Said of(String line) {
        if (line == null) {
            return new Said(Word.QUIT, "");
        }
        String text = line.strip();
        String lower = text.toLowerCase(Locale.ROOT);
        if (text.isEmpty()) {
            return new Said(Word.NOTHING, "");
        }
        for (Word word : Word.values()) {
            boolean begins = lower.equals(word.phrase) || lower.startsWith(word.phrase + " ");
            if (!word.phrase.isEmpty() && begins) {
                return new Said(word, text.substring(word.phrase.length()).strip());
            }
        }
        return new Said(Word.ANSWER, text);
    }
}
