package hingewise.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds the word that was probably meant. Only long words are mended, only by as few changes as leave them
 * recognisable, and never in the first letter, which is seldom mistyped.
 */
final class Spelling {
    private static final int SHORTEST = 6;
    /** From this length on two changes are allowed. */
    private static final int LONG = 11;
    /** With two changes, so many first letters must be right. */
    private static final int SURE = 3;

    private final List<List<String>> byLength = new ArrayList<>();
    private final Set<String> spared;

    /**
     * @param known words that may be meant
     * @param spared words that are right as they are, though they look like a known one
     */
    Spelling(Set<String> known, Set<String> spared) {
        this.spared = Set.copyOf(spared);
        for (String word : known) {
            if (word.length() >= SHORTEST) {
                while (byLength.size() <= word.length()) {
                    byLength.add(new ArrayList<>());
                }
                byLength.get(word.length()).add(word);
            }
        }
    }

    /** The nearest known word, if one is near enough; of equally near ones, the first in the alphabet. */
    Optional<String> meant(String word) {
        if (word.length() < SHORTEST || spared.contains(word)) {
            return Optional.empty();
        }
        int most = word.length() >= LONG ? 2 : 1;
        record Near(String word, int changes) {}
        return IntStream.rangeClosed(word.length() - most, word.length() + most)
                .filter(n -> n < byLength.size())
                .boxed()
                .flatMap(n -> byLength.get(n).stream())
                .filter(k -> k.charAt(0) == word.charAt(0))
                .map(k -> new Near(k, changes(word, k, most)))
                .filter(n -> n.changes <= 1 || n.changes <= most && word.startsWith(n.word.substring(0, SURE)))
                .min((a, b) ->
                        a.changes != b.changes ? Integer.compare(a.changes, b.changes) : a.word.compareTo(b.word))
                .map(Near::word);
    }

    /**
     * How many letters must be changed, added, left out or swapped with their neighbour; more than {@code most} when it
     * is more. The restricted form of Damerau 1964, CACM 7(3):171-176.
     */
    static int changes(String a, String b, int most) {
        int[] before = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        int[] next = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            next[0] = i;
            int least = i;
            for (int j = 1; j <= b.length(); j++) {
                int differ = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int best = Math.min(Math.min(row[j] + 1, next[j - 1] + 1), row[j - 1] + differ);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                next[j] = swapped ? Math.min(best, before[j - 2] + 1) : best;
                least = Math.min(least, next[j]);
            }
            if (least > most) {
                return most + 1;
            }
            int[] free = before;
            before = row;
            row = next;
            next = free;
        }
        return row[b.length()];
    }
}
