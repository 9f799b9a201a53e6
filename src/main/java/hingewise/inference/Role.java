package hingewise.inference;

/** How a kept variable takes part in a compiled plan. What a role allows decides for which evidence the plan serves. */
enum Role {
    /** Keeps its own place in the tables; any finding on it can be weighed in. */
    FREE,
    /**
     * A noisy-OR without children whose report speaks for "no" or not at all: the likelihood is then λ1 + (λ0 − λ1) · Π q
     * with both terms non-negative, so that one yes/no variable coupled to each parent singly takes the place of the
     * whole OR chain (the two-term form of Díez and Galán 2003, used here only where no term is negative).
     */
    FALLING,
    /** Certainly yes; its value is put into every table it occurs in. */
    YES,
    /** Certainly no; on a noisy-OR this folds into one number per parent. */
    NO;

    /** The most favourable role for a finding. */
    static Role of(Variable variable, Finding finding, boolean mayFall) {
        if (finding.ifNo() == 0) {
            return YES;
        }
        if (finding.ifYes() == 0) {
            return NO;
        }
        boolean falls = variable.mechanism() instanceof NoisyOr && finding.ifYes() <= finding.ifNo();
        return falls && mayFall ? FALLING : FREE;
    }

    /** Whether a plan that gives a variable this role can weigh the likelihoods in. */
    boolean serves(double ifYes, double ifNo) {
        return switch (this) {
            case FREE -> true;
            case FALLING -> ifYes <= ifNo;
            case YES -> ifNo == 0;
            case NO -> ifYes == 0;
        };
    }
}
