// Fairness notes in words: what differs, and what that does to the comparison.
#include "core/review/measure_words.h"

#include <cmath>

namespace holdband::review {

namespace {

struct NoteText {
    std::string note;
    std::string effect;
};

/// The two sides of a note, ready to be put into a sentence.
class NoteWriter {
public:
    NoteWriter(const analysis::FairnessNote& note, const SideManner& manner, const SideNames& names)
        : m_note(note), m_manner(manner), m_names(names)
    {
    }

    NoteText write() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case targets:
            return {mean("targets differ: ") + temperatures(),
                    "the one further from the room has more to do, so energy and temperature are "
                    "not of one task"};
        case tolerances:
            return {mean("tolerances differ: ") + differences("±"),
                    greater() + "'s band is wider and easier to stay in: deviations compare, time "
                                "inside does not"};
        case durations:
            return durationsText();
        case volumes:
            return {"the volumes differ: " + eachText(volume(m_note.a), volume(m_note.b)),
                    "more beer holds and moves more heat, which counts against the energy of " +
                        greater()};
        case ambient:
            return {ambientText(), "the warmer room asks for more cooling, which counts against "
                                   "the energy of " +
                                       greater() +
                                       "; energy for each degree-day allows for "
                                       "it"};
        case coverage:
            return {"not equally well seen: " + shares(" of the hold time"),
                    "what happened in the gaps is not in the figures of " + lesser()};
        case sensorAccuracy:
            return {"the sensors differ: " + eachText(doubt(m_note.a), doubt(m_note.b)),
                    accuracyEffect()};
        case sensorPlacement:
            return {"the probes sit in different places",
                    "a probe in the air or on the wall swings otherwise than one in the beer, so "
                    "deviations are not of one thing"};
        default:
            return writeOfMeters();
        }
    }

private:
    NoteText writeOfMeters() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case partlyMetered:
            return {"not metered throughout: " + shares(" of the run"),
                    m_names.ofSetups ? "a batch's energy is that of its metered part, which makes "
                                       "it too small for the whole"
                                     : "energies are compared over the elapsed time that is "
                                       "metered in both"};
        case batchesAtOnce:
            return {"batches at once on the setup, in the mean: " +
                        eachText(m_manner.fixed(m_note.a, 1), m_manner.fixed(m_note.b, 1)),
                    "the shared energy is split evenly, and a setup that serves more at once "
                    "spreads its standing losses, which favours " +
                        greater()};
        case meterAccuracyAssumed:
            return {"the accuracy of a meter " + assumedText() + " is unknown, 2 % is assumed",
                    "the bounds of the energies rest on it"};
        case noCommonMetering:
            return {"there is no elapsed time that is metered in both",
                    "energies can't be compared" + unmetered()};
        case oneMeter:
            return {"one meter measured both",
                    "its own error is the same for both, so it does not widen the bounds"};
        case sharedMeter:
            return {"both ran at once on one meter for " + m_manner.duration(m_note.a),
                    "of what it read then each is given an even share, so that time can't tell "
                    "them apart"};
        default:
            return writeOfRuns();
        }
    }
    NoteText writeOfRuns() const
    {
        using enum analysis::NoteKind;
        switch (m_note.kind) {
        case loggingInterval:
            return {"logged " + eachText(interval(m_note.a), interval(m_note.b)),
                    "the slower log misses short excursions, which favours " + slower()};
        case fermentationHeat:
            return {"the fermentations gave off unequal heat: " +
                        eachText(extract(m_note.a, m_note.measuredA),
                                 extract(m_note.b, m_note.measuredB)),
                    "the larger one needed more cooling, which counts against the energy of " +
                        greater()};
        case missedStage:
            return {"targets were missed: " + eachText(count(m_note.a), count(m_note.b)),
                    "nobody is ahead on temperature, and beer that never got cold was spared "
                    "the energy for it"};
        case fewBatches:
            return {"fewer than three batches: " + eachText(count(m_note.a), count(m_note.b)),
                    "how much batches differ is not known, so there is no interval and nobody is "
                    "ahead"};
        default:
            return {};
        }
    }

    NoteText durationsText() const
    {
        return {mean("times they ran are unequal: ", "they ran for unequal times: ") +
                    eachText(m_manner.duration(m_note.a), m_manner.duration(m_note.b)),
                m_names.ofSetups
                    ? "a longer batch uses more energy and has more hours to leave the band in: "
                      "mean power and shares compare, sums do not"
                    : "energies are compared over the shorter time; hours outside are of unequal "
                      "wholes"};
    }
    /// "the mean targets differ: " of setups, "the targets differ: " of batches
    std::string mean(const std::string& what, const std::string& ofBatches = {}) const
    {
        if (m_names.ofSetups)
            return "the mean " + what;
        return ofBatches.empty() ? "the " + what : ofBatches;
    }
    const std::string& greater() const { return m_note.a > m_note.b ? m_names.a : m_names.b; }
    const std::string& lesser() const { return m_note.a > m_note.b ? m_names.b : m_names.a; }
    const std::string& slower() const
    {
        if (m_note.a <= 0.0 || m_note.b <= 0.0) // one is not logged at all
            return m_note.a <= 0.0 ? m_names.a : m_names.b;
        return greater();
    }
    std::string eachText(const std::string& left, const std::string& right) const
    {
        return left + " for " + m_names.a + ", " + right + " for " + m_names.b;
    }
    std::string temperatures() const
    {
        return eachText(m_manner.temperature(m_note.a), m_manner.temperature(m_note.b));
    }
    std::string differences(const std::string& sign) const
    {
        return eachText(sign + m_manner.difference(m_note.a, 1),
                        sign + m_manner.difference(m_note.b, 1));
    }
    std::string ambientText() const
    {
        const double apart = m_note.a - m_note.b;
        return "the room was on average " + m_manner.difference(std::abs(apart), 1) +
               " further above the beer for " + greater() + " (" +
               eachText(m_manner.difference(m_note.a, 1), m_manner.difference(m_note.b, 1)) + ")";
    }
    std::string doubt(double kelvins) const
    {
        return kelvins < 0.0 ? "unknown accuracy" : "±" + m_manner.difference(kelvins);
    }
    std::string accuracyEffect() const
    {
        if (m_note.a < 0.0 || m_note.b < 0.0)
            return "nothing is known of the bounds of " + lesser() +
                   ", so nobody is ahead on temperature";
        return "the less sure sensor widens the bounds of " + greater();
    }
    std::string volume(double litres) const { return m_manner.volume(litres); }
    std::string shares(const std::string& of) const
    {
        return eachText(m_manner.share(m_note.a) + of, m_manner.share(m_note.b) + of);
    }
    std::string assumedText() const
    {
        if (m_note.a > 0.0 && m_note.b > 0.0)
            return "on each side";
        return "of " + (m_note.a > 0.0 ? m_names.a : m_names.b);
    }
    std::string unmetered() const
    {
        if (m_note.a > 0.0 && m_note.b > 0.0)
            return {};
        if (m_note.a <= 0.0 && m_note.b <= 0.0)
            return ": neither was metered";
        return ": " + lesser() + " was not metered";
    }
    std::string interval(double minutes) const
    {
        return minutes > 0.0 ? "every " + m_manner.duration(minutes / 60.0) : "not at all";
    }
    std::string extract(double kilograms, bool measured) const
    {
        return m_manner.fixed(kilograms, 2) + " kg of extract fermented" +
               (measured ? " (by the last gravity measured)" : "");
    }
    std::string count(double value) const { return m_manner.fixed(value, 0); }

    const analysis::FairnessNote& m_note;
    const SideManner& m_manner;
    const SideNames& m_names;
};

} // namespace

NoteWords noteWords(const analysis::FairnessNote& note, const SideManner& manner,
                    const SideNames& names)
{
    NoteText text = NoteWriter(note, manner, names).write();
    return {std::move(text.note), std::move(text.effect), std::string(measureName(note.touches)),
            measureTitle(note.touches, manner)};
}

} // namespace holdband::review
