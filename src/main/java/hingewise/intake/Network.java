package hingewise.intake;

import java.io.IOException;

/**
 * A network of two layers: features are added up to hidden units, and those that come out above nought to the logarithms
 * of the odds of each claim. All claims share the hidden units, so that what a word means in one it means in all.
 *
 * @param features by feature, what it adds to each hidden unit
 * @param thresholds what each hidden unit starts from
 * @param units by hidden unit, what it adds to each claim
 * @param bases what each claim starts from
 */
record Network(Rows features, float[] thresholds, Rows units, float[] bases) {
    static Network unpacked(Unpacker in) {
        return new Network(Rows.unpacked(in), in.numbers(), Rows.unpacked(in), in.numbers());
    }

    void pack(Packer out) throws IOException {
        features.pack(out);
        out.numbers(thresholds);
        units.pack(out);
        out.numbers(bases);
    }

    /** What one feature counts, so that long sentences do not weigh more than short ones. */
    static float each(int[] present) {
        return (float) (1 / Math.sqrt(Math.max(1, present.length)));
    }

    /** The logarithms of the odds of each claim. */
    float[] odds(int[] present) {
        float[] hidden = thresholds.clone();
        float each = each(present);
        for (int f : present) {
            features.add(f, each, hidden);
        }
        float[] odds = bases.clone();
        for (int h = 0; h < hidden.length; h++) {
            if (hidden[h] > 0) {
                units.add(h, hidden[h], odds);
            }
        }
        return odds;
    }
}
