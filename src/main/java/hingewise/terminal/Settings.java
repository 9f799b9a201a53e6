package hingewise.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Knows again the files that an answer rests on. */
final class Settings {
    private Settings() {}

    /** SHA-256 over the rule book, price book and shop file that were named; what was not named is the program's own. */
    static String digest(RulesOption rules, FiguresOption figures) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            if (rules.folder().isPresent()) {
                digest.update(
                        rules.files().digest().orElseThrow(Settings::unreadable).getBytes(StandardCharsets.UTF_8));
            }
            add(digest, "prices", figures.pricesFile().stream().toList());
            add(digest, "shop", figures.shopFile().stream().toList());
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        } catch (IOException e) {
            throw unreadable();
        }
    }

    private static Refusal unreadable() {
        return Refusal.badInput(
                "a file of the rule book, the price book or the shop file could not be read; try again");
    }

    private static void add(MessageDigest digest, String what, List<Path> files) throws IOException {
        digest.update(what.getBytes(StandardCharsets.UTF_8));
        for (Path file : files) {
            digest.update(String.valueOf(file.getFileName()).getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            digest.update(Files.readAllBytes(file));
        }
    }
}
