// Two batches or two setups compared: figures from the analysis, and the words for them.
#pragma once

#include "core/analysis/comparison.h"
#include "core/logbook/equipment.h"
#include "core/store/logbook_file.h"

#include <string>
#include <vector>

namespace holdband::review {

struct NoteWords {
    std::string note;    ///< "the room was 2.9 °F warmer for A"
    std::string effect;  ///< "A had more heat to move, so its energy says less against it"
    std::string measure; ///< the name of the measure it touches
};

/// One line of the table, ready to be shown.
struct MeasureWords {
    std::string title; ///< "Energy, kWh"
    std::string a;
    std::string b;
    std::string difference;
    std::string ratio; ///< "2.30 (2.21 – 2.39)"
    std::string ahead; ///< "A", "B", "too close to call", or empty
};

struct SideBySide {
    LogbookSettings settings;
    std::string a;
    std::string b;
    bool ofSetups = false;
    std::string temperatureSentence;
    std::string energySentence;
    std::vector<analysis::Measure> measures;
    std::vector<MeasureWords> lines; ///< one for each measure
    std::vector<NoteWords> notes;
    std::vector<analysis::RatioPoint> ratioCurve; ///< of two batches
    std::vector<std::string> batchesA;            ///< of setups: what went in
    std::vector<std::string> batchesB;
};

/// Two batches, or two setups over their ended batches. A name that is both is taken as a batch.
/// Problem (data): an unknown name (near ones listed), a batch against a setup, the same twice, a
/// setup without a finished batch.
Result<SideBySide> reviewSideBySide(const store::LogbookFile& logbook, const std::string& a,
                                    const std::string& b);

} // namespace holdband::review
