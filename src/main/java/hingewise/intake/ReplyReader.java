package hingewise.intake;

import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a seller's reply to numbered questions, such as "1 yes, 2 no idea". Not for several threads at once.
 */
public final class ReplyReader {
    /** A number that may begin an answer. */
    private static final Pattern NUMBER =
            Pattern.compile("(?:^|[\\s,;.(])([1-9])(?![\\d.,]?\\d|\\s*%)(?:\\s*[).:=-]+)?");

    private final ListingReader reader;
    private final RuleBook rules;

    /** @param reader of texts, by the same rule book; no other thread uses it */
    public ReplyReader(RuleBook rules, ListingReader reader) {
        this.rules = rules;
        this.reader = reader;
    }

    /**
     * What is answered.
     *
     * @param answer yes or no; empty for "I don't know"
     * @param quote the words it rests on
     */
    public record Answer(Observation observation, Optional<Boolean> answer, String quote) {}

    /**
     * The answers that are clear, in the order of the questions; a question without one is not answered.
     *
     * @param asked the questions, as numbered
     */
    public List<Answer> read(List<Observation> asked, String reply) {
        List<Answer> answers = new ArrayList<>();
        List<Part> parts = parts(reply, asked.size());
        for (Part part : parts) {
            answer(asked.get(part.number() - 1), part.text()).ifPresent(answers::add);
        }
        if (parts.isEmpty()) {
            asked.forEach(o -> suggested(o, reply).ifPresent(answers::add));
        }
        return List.copyOf(answers);
    }

    private record Part(int number, String text) {}

    /** The reply divided at the numbers of the questions, which must rise. */
    private List<Part> parts(String reply, int questions) {
        List<Part> parts = new ArrayList<>();
        Matcher m = NUMBER.matcher(reply);
        int number = 0;
        int start = 0;
        int from = 0;
        while (m.find(from)) {
            int next = Integer.parseInt(m.group(1));
            if (next > number && next <= questions && begins(reply, m)) {
                if (number > 0) {
                    parts.add(new Part(number, bare(reply.substring(start, m.start()))));
                }
                number = next;
                start = m.end();
            }
            from = m.end();
        }
        if (number > 0) {
            parts.add(new Part(number, bare(reply.substring(start))));
        }
        return parts;
    }

    /** Whether an answer begins here: a number amid words does so only if an answer follows, as in "1 yes 2 no". */
    private boolean begins(String reply, Matcher m) {
        String before = reply.substring(0, m.start(1)).stripTrailing();
        boolean amid = !before.isEmpty() && Character.isLetterOrDigit(before.charAt(before.length() - 1));
        boolean sameLine = reply.substring(before.length(), m.start(1)).indexOf('\n') < 0;
        if (!amid || !sameLine || m.end() > m.end(1)) {
            return true;
        }
        String word = reply.substring(m.end()).strip().split("[\\s,;.]", 2)[0];
        return rules.languages().keySet().stream()
                .anyMatch(l -> reader.reply(l, word).isPresent());
    }

    private static String bare(String part) {
        return part.strip().replaceAll("[\\s,;.]+$", "");
    }

    private Optional<Answer> answer(Observation o, String text) {
        Set<Replies.Reply> said = rules.languages().keySet().stream()
                .flatMap(l -> reader.reply(l, text).stream())
                .collect(Collectors.toSet());
        if (said.contains(Replies.Reply.UNKNOWN)) {
            return Optional.of(new Answer(o, Optional.empty(), text));
        }
        boolean yes = said.contains(Replies.Reply.YES);
        boolean no = said.contains(Replies.Reply.NO);
        if (yes == no) {
            return yes ? Optional.empty() : suggested(o, text);
        }
        return Optional.of(new Answer(o, Optional.of(yes), text)).filter(a -> agrees(o, text, a.answer()));
    }

    /** "No, it does" is unclear: the first word and the rest must not contradict each other. */
    private boolean agrees(Observation o, String text, Optional<Boolean> answer) {
        return suggested(o, text)
                .flatMap(Answer::answer)
                .flatMap(rest -> answer.map(rest::equals))
                .orElse(true);
    }

    private Optional<Answer> suggested(Observation o, String text) {
        return reader.read(text).suggestions().stream()
                .filter(s -> s.observation().equals(o.id()))
                .map(s -> new Answer(o, Optional.of(s.yes()), s.quote()))
                .findFirst();
    }
}
