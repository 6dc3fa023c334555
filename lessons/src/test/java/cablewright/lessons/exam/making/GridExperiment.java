package cablewright.lessons.exam.making;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exam.paper.PortSamples;
import cablewright.lessons.exercise.*;
import cablewright.lessons.generation.*;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.instrument.*;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.Stimulus;
import java.util.*;

class GridExperiment {
    public static void main(String[] a) {
        List<Exercise> all = new ArrayList<>();
        for (Lesson l : BuiltInLessons.all()) all.addAll(l.exercises());
        for (ExerciseFamily f : List.of(ExerciseFamily.values()[1], ExerciseFamily.values()[2]))
            all.add(new ExerciseGenerator().generate(new GenerationRequest(5, List.of(f), List.of(), 0.5)));
        for (Exercise e : all) {
            ContourGrid g0 = PaperGrid.of(e); ContourGrid g = new ContourGrid(g0.dampingPerSecond(), g0.periodSeconds(), g0.samples()*Integer.parseInt(a[0]));
            Reflectometer r = new Reflectometer(e.instrument().withOutgoingShare(0));
            double worstP = 0, worstC = 0; String where = "", whereC="";
            ContourGrid fine = new ContourGrid(g.dampingPerSecond(), g.periodSeconds(), Math.min(1<<21, g.samples() * 16));
            Instrument i0 = e.instrument().withOutgoingShare(0);
            Instrument many = new Instrument(i0.sourceOhms(), i0.bandwidthHertz(), i0.outgoingShare(), i0.recoveryShare(), i0.recoverySeconds(), i0.noiseVolts(), i0.converterBits(), i0.fullScaleVolts(), 65536, i0.timebaseErrorFraction(), i0.interference());
            Reflectometer rm = new Reflectometer(many);
            for (LineEnd end : e.permitted().ends()) {
                SimulatedPort p = new SimulatedPort(e.cable().seenFrom(end), e.instrument().sourceOhms());
                double edge = e.permitted().stimuli().stream().mapToDouble(s -> r.longestSampleSeconds(s) * 12).min().orElseThrow();
                PortResponse q = PortSamples.of(end, e.instrument().sourceOhms(), g, p.reflection(g, g.frequencies(), edge)).port();
                var gamma = p.reflection(fine, fine.frequencies(), edge);
                PortResponse ref = new PortResponse() {
                    public double referenceOhms() { return e.instrument().sourceOhms(); }
                    public Optional<ContourGrid> nativeGrid() { return Optional.of(fine); }
                    public cablewright.simulator.kernel.ComplexArray reflection(ContourGrid gg, int n) { double[] x=new double[n], y=new double[n]; for (int k=0;k<n;k++){x[k]=gamma.re(k);y[k]=gamma.im(k);} return cablewright.simulator.kernel.ComplexArray.takingOver(x,y);} };
                for (Stimulus s : e.permitted().stimuli()) for (double range : e.permitted().rangesMetres()) for (double v : new double[]{e.permitted().velocity().leastFraction(), e.permitted().velocity().mostFraction()}) {
                    Settings set = e.start().settings().withStimulus(s).withRangeMetres(range).withVelocityFraction(v);
                    Trace t = r.withoutNoise(q, set), u = r.withoutNoise(p, set), f = rm.withoutNoise(ref, set);
                    for (double gain : e.permitted().gainsDecibels()) {
                        double clip = i0.clipVolts(gain), step = i0.stepVolts(gain);
                        for (int i = 0; i < t.count(); i++) {
                            double tm = t.seconds(i) + t.zeroSeconds(); double fv = at(f, tm);
                            if (Math.abs(fv) > clip) continue;
                            double rel = Math.abs(t.volts(i) - fv) / step;
                            if (rel > worstP) { worstP = rel; where = s + " range " + range + " v " + v + " gain " + gain + " at " + t.metres(i) + " m, " + t.volts(i) + " V"; }
                        }
                        for (int i = 0; i < u.count(); i++) {
                            double fv = at(f, u.seconds(i) + u.zeroSeconds());
                            if (Math.abs(fv) > clip) continue;
                            double rel = Math.abs(u.volts(i) - fv) / step;
                            if (rel > worstC) { worstC = rel; whereC = s + " range " + range + " v " + v + " gain " + gain + " at " + u.metres(i) + " m, " + u.volts(i) + " V"; }
                        }
                    }
                }
            }
            System.out.printf("%-22s n=%d paper %.3f steps %s%n      cable %.3f steps %s%n", e.id(), g.samples(), worstP, where, worstC, whereC);
        }
    }
    static double at(Trace f, double t) { double x = t / f.sampleSeconds(); int i=(int)Math.floor(x+1e-9); if (i>=f.count()-1) return f.volts(f.count()-1); double w=x-i; return (1-w)*f.volts(i)+w*f.volts(i+1); }
}
