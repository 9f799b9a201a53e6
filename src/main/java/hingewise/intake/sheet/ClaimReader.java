package hingewise.intake.sheet;

import hingewise.casefile.Phone;
import java.util.List;

/** Takes from a text what it plainly claims. Not for several threads at once. */
@FunctionalInterface
public interface ClaimReader {
    /** The claims that can be taken without anybody looking, each observation once. */
    List<Claim> read(Phone phone, String text);
}
