// The data of a run's three panels, as plain values in display units. The panels only draw it.
// Times are ms from `origin`. Built once for each run; safe on any thread.
#pragma once

#include "core/results/run/run_review.h"
#include "ui/charts/arrival_fan.h"
#include "ui/charts/decimate.h"

#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace holdband::ui {

enum class LineRole { beer, ambient, chamber, coolant };

struct ChartLine {
    LineRole role = LineRole::beer;
    std::string name; ///< "beer", "room"
    analysis::Track track;
    TrackPyramid pyramid = {};
};

struct Stretch {
    double fromMs = 0.0;
    double toMs = 0.0;

    bool operator==(const Stretch&) const = default;
};

/// A stretch of the beer's readings that was left out by hand.
struct LeftOutStretch {
    Stretch time;
    std::string why;
};

/// A stage's target and band: a straight line from one end to the other.
struct BandPiece {
    Stretch time;
    double startTarget = 0.0; ///< °C or °F
    double endTarget = 0.0;
    double tolerance = 0.0; ///< ± difference in the same unit

    double targetAt(double ms) const;
};

struct StageBox {
    std::string label;
    std::string words; ///< the full text, for a tooltip
    Stretch time;
};

struct ExcursionMark {
    Stretch time;           ///< from its beginning to its end, with short returns
    double outsideMs = 0.0; ///< the part of it outside the band
    double peakMs = 0.0;
    double peakTemperature = 0.0;
    double peakDeviation = 0.0; ///< signed
    double edgeDeviation = 0.0; ///< signed: the band's edge that was crossed
    bool above = true;
    std::string cause; ///< given by the user: "lid open, \"bottled a sample\""; usually empty
};

struct EnergyDot {
    double ms = 0.0;
    double kwh = 0.0;
    bool read = false;
    bool joined = false; ///< connected to the dot before by a line
    bool reset = false;  ///< the register was reset to 0 before this reading
};

/// Bounds of the cumulative energy at an instant.
struct EnergyBounds {
    double ms = 0.0;
    double low = 0.0;
    double high = 0.0;
    bool joined = false;
};

/// A remark of the journal on the time axis.
struct NoteMark {
    double ms = 0.0;
    std::string text;
};

struct RunChart {
    std::string batch;
    int setup = 0; ///< of setupColour: the beer and the energy have their setup's colour
    Instant origin;
    Span span;
    Zone zone;
    TemperatureUnit unit = TemperatureUnit::celsius;
    std::vector<StageBox> stages;
    std::vector<BandPiece> bands;
    std::vector<ChartLine> lines;                ///< the beer last, so that it is drawn on top
    std::vector<analysis::Track> deviation;      ///< by stage
    std::vector<TrackPyramid> deviationPyramids; ///< one for each of these
    std::vector<Stretch> gaps;                   ///< the beer's temperature is not known
    std::vector<LeftOutStretch> leftOut;         ///< known, but left out by hand; outside the gaps
    std::vector<Stretch> settling;               ///< not judged
    std::vector<ExcursionMark> excursions;
    std::vector<EnergyDot> energy;
    std::vector<EnergyBounds> energyBounds; ///< where both are known
    bool energyUnbounded = false;           ///< somewhere the upper bound is unknown
    std::vector<Stretch> unmetered;         ///< no meter covers this time
    std::vector<NoteMark> notes;            ///< in order of time
    std::vector<store::StoredCause> causes; ///< of excursions, including those with other limits
    std::optional<ArrivalFan> fan;          ///< after the last reading

    double msOf(Instant at) const { return static_cast<double>((at - origin).count()); }
    Instant instantOf(double ms) const { return plusMs(origin, ms); }
    /// The span, and what is forecast after it.
    Span wholeSpan() const;
    const ChartLine* line(LineRole role) const;
    /// Any sensor was logged.
    bool hasReadings() const;
    bool hasDeviation() const;
    /// The left-out stretch at that time; null if there is none.
    const LeftOutStretch* leftOutAt(double ms) const;
};

RunChart chartOf(const results::RunReview& review);

/// Replaces the drawn judging with another one of the same run.
void setJudged(RunChart& chart, const analysis::JudgedBatch& judged);

/// The value of a track, if covered.
std::optional<double> valueAt(const analysis::Track& track, double ms);

/// The bounds of the energy at an instant, where known.
std::optional<EnergyBounds> boundsAt(const RunChart& chart, double ms);
std::optional<double> energyAt(const RunChart& chart, double ms);

/// The time of the reading of the beer or a meter closest to `ms`; absent without readings.
std::optional<double> nearestReading(const RunChart& chart, double ms);
/// The beer's reading before or after `ms`.
std::optional<double> adjacentReading(const RunChart& chart, double ms, bool after);

} // namespace holdband::ui
