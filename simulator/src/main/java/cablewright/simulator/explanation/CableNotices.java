// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.notice.Notice;
import cablewright.simulator.notice.NoticeKind;
import cablewright.simulator.solve.ReflectionSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a result over a cable must say of the models behind it: where one is used near or outside its range, and how much
 * the steps in which profiles are taken may matter.
 */
public final class CableNotices {

    private static final double REFERENCE_OHMS = 75;

    private CableNotices() {}

    /**
     * A notice and the stretch to which it belongs.
     *
     * @param startMetres where the stretch begins, from the near end [m]
     * @param endMetres where it ends [m]
     * @param notice what is said of it
     */
    public record Placed(double startMetres, double endMetres, Notice notice) {}

    /**
     * Gathers the notices of all pieces of a cable; neighbours with the same notice are merged.
     *
     * @param cable the cable
     * @param topHertz top of the band in use [Hz]
     * @return the notices in order of place; empty where every model is well within its range
     */
    public static List<Placed> of(Cable cable, double topHertz) {
        List<Placed> placed = new ArrayList<>();
        for (CableProfile.Piece piece : CableProfile.of(cable).pieces()) {
            for (Notice notice : piece.section().notices(topHertz)) {
                add(placed, new Placed(piece.startMetres(), piece.endMetres(), notice));
            }
        }
        cable.events().stream()
                .filter(Kink.class::isInstance)
                .map(Kink.class::cast)
                .forEach(kink -> tightBend(cable, kink).ifPresent(placed::add));
        return placed;
    }

    private static Optional<Placed> tightBend(Cable cable, Kink kink) {
        double least =
                kink.foldsBelowMetres(cable.runAt(kink.startMetres()).type().section());
        if (kink.bendRadiusMetres() >= least) {
            return Optional.empty();
        }
        Notice notice = new Notice(NoticeKind.BENT_TOO_TIGHTLY, kink.bendRadiusMetres(), least);
        return Optional.of(new Placed(kink.startMetres(), kink.endMetres(), notice));
    }

    private static void add(List<Placed> placed, Placed next) {
        for (int i = placed.size() - 1; i >= 0; i--) {
            Placed before = placed.get(i);
            boolean joins = before.endMetres() >= next.startMetres();
            if (joins && before.notice().kind() == next.notice().kind()) {
                placed.set(i, new Placed(before.startMetres(), next.endMetres(), before.notice()));
                return;
            }
        }
        placed.add(next);
    }

    /**
     * Bounds what the steps of profiles do to the reflection, by taking steps half as long or shorter.
     *
     * @param cable the cable
     * @param steps the steps in question
     * @param hertz frequencies at which to compare [Hz]
     * @return largest |Γ − Γ of the halved steps|; the error of the steps themselves is about 4/3 of it
     */
    public static double profileStepError(Cable cable, ProfileSteps steps, double... hertz) {
        Frequencies at = Frequencies.ofSweep(hertz);
        ComplexArray coarse = ReflectionSolver.reflection(CableCompiler.compile(cable, steps), REFERENCE_OHMS, at);
        ComplexArray fine =
                ReflectionSolver.reflection(CableCompiler.compile(cable, steps.halved()), REFERENCE_OHMS, at);
        double most = 0;
        for (int k = 0; k < hertz.length; k++) {
            most = Math.max(most, Math.hypot(coarse.re(k) - fine.re(k), coarse.im(k) - fine.im(k)));
        }
        return most;
    }
}
