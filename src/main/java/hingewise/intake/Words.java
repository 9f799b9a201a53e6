package hingewise.intake;

import hingewise.rulebook.Language.Stemming;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.de.GermanLightStemFilter;
import org.apache.lucene.analysis.de.GermanNormalizationFilter;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.snowball.SnowballFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.tartarus.snowball.ext.EnglishStemmer;

/** Takes a text apart into words, with the endings of one language taken off. */
final class Words {
    /** Between two letters the tokeniser would take these for part of the word. */
    private static final Pattern GLUED = Pattern.compile("(?<=\\p{L}{2})[.:_](?=\\p{L}{2})|_");

    private static final Pattern PARAGRAPH = Pattern.compile("\\R\\s*\\R|\\R\\s*[-*•·–>+✔✅❌✗]|\\R(?!\\s*\\p{Ll})");
    private static final Pattern BULLET = Pattern.compile("[•·▪●]|\\|");

    /** Marks that say yes or no; the tokeniser passes over them, so that letters stand in for them. */
    private static final String YES_MARKS = "✔✅☑✓";

    private static final String NO_MARKS = "❌✗✘✖";
    private static final char YES = 'ʘ';
    private static final char NO = 'ǃ';

    private final Stemming stemming;

    Words(Stemming stemming) {
        this.stemming = stemming;
    }

    /** The words in order; offsets are those of the text as given. */
    List<Word> of(String text) {
        String plain = GLUED.matcher(letters(text)).replaceAll(" ");
        boolean leading = !text.isBlank() && isMark(letters(text).strip().charAt(0));
        StandardTokenizer tokens = new StandardTokenizer();
        tokens.setReader(new StringReader(plain));
        List<Word> words = new ArrayList<>();
        try (TokenStream stream = stemmed(tokens)) {
            CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
            OffsetAttribute offset = stream.addAttribute(OffsetAttribute.class);
            stream.reset();
            int last = 0;
            while (stream.incrementToken()) {
                int start = offset.startOffset();
                words.add(new Word(
                        plain.substring(start, offset.endOffset()).toLowerCase(Locale.ROOT),
                        term.toString(),
                        start,
                        offset.endOffset(),
                        isMark(plain.charAt(start)) && leading
                                ? Word.Gap.STOP
                                : gap(text.substring(last, start), words.isEmpty())));
                last = offset.endOffset();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory cannot fail", e);
        }
        return words;
    }

    private static String letters(String text) {
        StringBuilder letters = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            letters.append(
                    YES_MARKS.indexOf(c) >= 0
                            ? YES
                            : NO_MARKS.indexOf(c) >= 0 ? NO : c == '’' || c == '´' || c == '`' ? '\'' : c);
        }
        return letters.toString();
    }

    private static boolean isMark(char c) {
        return c == YES || c == NO;
    }

    private TokenStream stemmed(TokenStream tokens) {
        TokenStream lower = new LowerCaseFilter(tokens);
        return switch (stemming) {
            case ENGLISH -> new SnowballFilter(new EnglishPossessiveFilter(lower), new EnglishStemmer());
            case GERMAN -> new GermanLightStemFilter(new GermanNormalizationFilter(lower));
            case NONE -> lower;
        };
    }

    private static Word.Gap gap(String between, boolean first) {
        if (first) {
            return Word.Gap.STOP;
        }
        if (between.isBlank() && between.indexOf('\n') < 0 && between.indexOf('\r') < 0) {
            return Word.Gap.NONE;
        }
        if (between.indexOf('?') >= 0) {
            return Word.Gap.QUESTION;
        }
        String trimmed = between.strip();
        boolean sentence = trimmed.chars().anyMatch(c -> c == '.' || c == '!' || c == ';' || c == '…');
        if (sentence
                || PARAGRAPH.matcher(between).find()
                || BULLET.matcher(between).find()) {
            return trimmed.startsWith(":") && !sentence ? Word.Gap.COLON : Word.Gap.STOP;
        }
        return inLine(trimmed, between);
    }

    private static Word.Gap inLine(String trimmed, String between) {
        if (trimmed.indexOf(':') >= 0 || trimmed.indexOf('=') >= 0 || trimmed.indexOf('→') >= 0) {
            return Word.Gap.COLON;
        }
        boolean dash = trimmed.indexOf('–') >= 0 || trimmed.indexOf('—') >= 0 || trimmed.contains("--");
        if (dash || trimmed.equals("-") && !between.equals("-")) {
            return Word.Gap.DASH;
        }
        if (trimmed.indexOf('(') >= 0 || trimmed.indexOf(')') >= 0 || trimmed.indexOf('[') >= 0) {
            return Word.Gap.BRACKET;
        }
        if (trimmed.indexOf(',') >= 0) {
            return Word.Gap.COMMA;
        }
        boolean join = trimmed.equals("&") || trimmed.equals("/") || trimmed.equals("+");
        return join ? Word.Gap.JOIN : Word.Gap.NONE;
    }
}
