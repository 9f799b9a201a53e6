package hingewise.terminal;

import picocli.CommandLine.Option;

/** Whether to colour. */
final class ColourOption {
    @Option(
            names = "--colour",
            paramLabel = "WHEN",
            defaultValue = "auto",
            description = "auto (only on a terminal, and not if NO_COLOR is set), always or never.")
    private ColourWish wish = ColourWish.AUTO;

    Look on(Look look) {
        return wish.on(look);
    }
}
