// The texts of fairness notes: what differs, and how that affects the comparison.
#include "core/results/comparison/measure_text.h"
#include "core/text/phrase.h"

#include <cmath>

namespace holdband::results {

namespace {

struct WrittenNote {
    std::string note;
    std::string effect;
};

/// Writes the two sides of a note for its sentences.
class NoteWriter {
public:
    NoteWriter(const analysis::FairnessNote& note, const SideFormat& format, const SideNames& names)
        : m_note(note), m_format(format), m_names(names)
    {
    }

    WrittenNote write() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case targets:
            return {meanOr(Phrase::tr("the mean targets differ: %1"),
                           Phrase::tr("the targets differ: %1"))
                        .with(temperatures()),
                    Phrase::tr("the one further from the room has more to do, so energy and "
                               "temperature are not of one task")};
        case tolerances:
            return {meanOr(Phrase::tr("the mean tolerances differ: %1"),
                           Phrase::tr("the tolerances differ: %1"))
                        .with(differences("±")),
                    Phrase::tr("%1's band is wider and easier to stay in: deviations compare, "
                               "time inside does not")
                        .with(greater())};
        case durations:
            return durationsText();
        case volumes:
            return {Phrase::tr("the volumes differ: %1")
                        .with(eachText(volume(m_note.a), volume(m_note.b))),
                    Phrase::tr("more beer holds and moves more heat, which counts against the "
                               "energy of %1")
                        .with(greater())};
        case ambient:
            return {ambientText(),
                    Phrase::tr("the warmer room asks for more cooling, which counts against the "
                               "energy of %1; energy for each degree-day allows for it")
                        .with(greater())};
        case coverage:
            return {
                Phrase::tr("not equally well covered: %1 of the hold time for %2, %3 of the hold "
                           "time for %4")
                    .with(m_format.share(m_note.a), m_names.a, m_format.share(m_note.b), m_names.b),
                Phrase::tr("what happened in the gaps is not in the figures of %1").with(lesser())};
        case sensorAccuracy:
            return {Phrase::tr("the sensors differ: %1")
                        .with(eachText(doubt(m_note.a), doubt(m_note.b))),
                    accuracyEffect()};
        case sensorPlacement:
            return {Phrase::tr("the probes sit in different places"),
                    Phrase::tr("a probe in the air or on the wall swings differently from one in "
                               "the beer, so their deviations can't be compared")};
        default:
            return writeOfMeters();
        }
    }

private:
    WrittenNote writeOfMeters() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case partlyMetered:
            return partlyMeteredText();
        case batchesAtOnce:
            return {Phrase::tr("batches at once on the setup, in the mean: %1")
                        .with(eachText(m_format.fixed(m_note.a, 1), m_format.fixed(m_note.b, 1))),
                    Phrase::tr("the shared energy is split evenly, and a setup that serves more at "
                               "once spreads its standing losses, which favours %1")
                        .with(greater())};
        case meterAccuracyAssumed:
            return {assumedText(), Phrase::tr("the bounds of the energies rest on it")};
        case noCommonMetering:
            return {Phrase::tr("there is no elapsed time that is metered in both"), unmetered()};
        case oneMeter:
            return {Phrase::tr("one meter measured both"),
                    Phrase::tr("its own error is the same for both, so it does not widen the "
                               "bounds")};
        case sharedMeter:
            return {Phrase::tr("both ran at once on one meter for %1")
                        .with(m_format.duration(m_note.a)),
                    Phrase::tr("of what it read then each is given an even share, so that time "
                               "can't tell them apart")};
        default:
            return writeOfRuns();
        }
    }
    WrittenNote writeOfRuns() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case loggingInterval:
            return {Phrase::tr("logged %1", "every so many minutes, on each side")
                        .with(eachText(interval(m_note.a), interval(m_note.b))),
                    Phrase::tr("the slower log misses short excursions, which favours %1")
                        .with(slower())};
        case fermentationHeat:
            return {Phrase::tr("the fermentations gave off unequal heat: %1")
                        .with(eachText(extract(m_note.a, m_note.measuredA),
                                       extract(m_note.b, m_note.measuredB))),
                    Phrase::tr("the larger one needed more cooling, which counts against the "
                               "energy of %1")
                        .with(greater())};
        case missedStage:
            return {Phrase::tr("targets were missed: %1")
                        .with(eachText(count(m_note.a), count(m_note.b))),
                    Phrase::tr("nobody is ahead on temperature, and beer that never got cold was "
                               "spared the energy for it")};
        case fewBatches:
            return {Phrase::tr("fewer than three batches: %1")
                        .with(eachText(count(m_note.a), count(m_note.b))),
                    Phrase::tr("how much batches differ is not known, so there is no interval and "
                               "nobody is ahead")};
        default:
            return {};
        }
    }

    WrittenNote partlyMeteredText() const
    {
        return {Phrase::tr("not metered throughout: %1 of the run for %2, %3 of the run for %4")
                    .with(m_format.share(m_note.a), m_names.a, m_format.share(m_note.b), m_names.b),
                meanOr(Phrase::tr("the energy of a batch covers its metered part only, so it is "
                                  "too small for the whole batch"),
                       Phrase::tr("energies are compared over the elapsed time that is metered in "
                                  "both"))};
    }
    WrittenNote durationsText() const
    {
        return {meanOr(Phrase::tr("the mean times they ran are unequal: %1"),
                       Phrase::tr("they ran for unequal times: %1"))
                    .with(eachText(m_format.duration(m_note.a), m_format.duration(m_note.b))),
                meanOr(Phrase::tr("a longer batch uses more energy and has more hours to leave the "
                                  "band in: mean power and shares compare, sums do not"),
                       Phrase::tr("energies are compared over the shorter time; hours outside are "
                                  "of unequal wholes"))};
    }
    /// For setups, figures are means.
    Phrase meanOr(const Phrase& ofSetups, const Phrase& ofBatches) const
    {
        return m_names.ofSetups ? ofSetups : ofBatches;
    }
    const std::string& greater() const { return m_note.a > m_note.b ? m_names.a : m_names.b; }
    const std::string& lesser() const { return m_note.a > m_note.b ? m_names.b : m_names.a; }
    const std::string& slower() const
    {
        if (m_note.a <= 0.0 || m_note.b <= 0.0) // one has no log
            return m_note.a <= 0.0 ? m_names.a : m_names.b;
        return greater();
    }
    std::string eachText(const std::string& left, const std::string& right) const
    {
        return Phrase::tr("%1 for %2, %3 for %4", "what each side has")
            .with(left, m_names.a, right, m_names.b);
    }
    std::string temperatures() const
    {
        return eachText(m_format.temperature(m_note.a), m_format.temperature(m_note.b));
    }
    std::string differences(const std::string& sign) const
    {
        return eachText(sign + m_format.difference(m_note.a, 1),
                        sign + m_format.difference(m_note.b, 1));
    }
    std::string ambientText() const
    {
        const double apart = m_note.a - m_note.b;
        return Phrase::tr("the room was on average %1 further above the beer for %2 (%3)")
            .with(m_format.difference(std::abs(apart), 1), greater(),
                  eachText(m_format.difference(m_note.a, 1), m_format.difference(m_note.b, 1)));
    }
    std::string doubt(double kelvins) const
    {
        return kelvins < 0.0 ? Phrase::tr("unknown accuracy").text()
                             : "±" + m_format.difference(kelvins);
    }
    std::string accuracyEffect() const
    {
        if (m_note.a < 0.0 || m_note.b < 0.0)
            return Phrase::tr("the range of %1 is not known, so nobody is ahead on temperature")
                .with(lesser());
        return Phrase::tr("the less sure sensor widens the bounds of %1").with(greater());
    }
    std::string volume(double litres) const { return m_format.volume(litres); }
    std::string assumedText() const
    {
        if (m_note.a > 0.0 && m_note.b > 0.0)
            return Phrase::tr("the accuracy of a meter on each side is unknown, 2 % is assumed");
        return Phrase::tr("the accuracy of a meter of %1 is unknown, 2 % is assumed")
            .with(m_note.a > 0.0 ? m_names.a : m_names.b);
    }
    std::string unmetered() const
    {
        if (m_note.a > 0.0 && m_note.b > 0.0)
            return Phrase::tr("energies can't be compared");
        if (m_note.a <= 0.0 && m_note.b <= 0.0)
            return Phrase::tr("energies can't be compared: neither was metered");
        return Phrase::tr("energies can't be compared: %1 was not metered").with(lesser());
    }
    std::string interval(double minutes) const
    {
        if (minutes > 0.0)
            return Phrase::tr("every %1").with(m_format.duration(minutes / 60.0));
        return Phrase::tr("not at all", "logged");
    }
    std::string extract(double kilograms, bool measured) const
    {
        const Phrase phrase =
            measured ? Phrase::tr("%1 kg of extract fermented (by the last gravity measured)")
                     : Phrase::tr("%1 kg of extract fermented");
        return phrase.with(m_format.fixed(kilograms, 2));
    }
    std::string count(double value) const { return m_format.fixed(value, 0); }

    const analysis::FairnessNote& m_note;
    const SideFormat& m_format;
    const SideNames& m_names;
};

} // namespace

NoteText noteText(const analysis::FairnessNote& note, const SideFormat& format,
                  const SideNames& names)
{
    WrittenNote text = NoteWriter(note, format, names).write();
    return {std::move(text.note), std::move(text.effect), measureTitle(note.touches, format)};
}

} // namespace holdband::results
