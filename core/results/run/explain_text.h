// Texts that explanations share: lengths of time that can be added up by hand, differences and
// temperatures in the units of the logbook. Not for use outside core/results.
#pragma once

#include "core/results/run/explain.h"
#include "core/text/quantities.h"

#include <string>

namespace holdband::results {

/// "251 h 12 min", "48 min", "40 s": always in hours, so that sums can be checked. From ms.
std::string spanText(double ms);

class ExplainText {
public:
    ExplainText(const RunReview& review, char decimalSign) : m_review(review), m_sign(decimalSign)
    {
    }

    /// "1.8 °F", with a minus sign below 0. From K.
    std::string difference(double kelvins) const;
    /// "+0.39 °F": which side of the target. From K.
    std::string deviation(double kelvins) const;
    /// "1.13 °C·h". From K·h.
    std::string degreeHours(double kelvinHours) const;
    /// "66.2 °F". From °C.
    std::string temperature(Temperature temperature) const;
    std::string share(double share) const;
    std::string kwh(double value, int decimals = 2) const;
    std::string number(double value, int decimals) const;
    std::string money(double amount) const;
    std::string time(Instant at) const;
    /// The bounds in brackets, with a space before; empty if neither is known.
    std::string bounds(const analysis::EnergyFigure& energy) const;
    bool fahrenheit() const;
    VerdictFormat verdictFormat() const { return {m_review.settings.temperatureUnit(), m_sign}; }

    const RunReview& review() const { return m_review; }
    char sign() const { return m_sign; }

private:
    const RunReview& m_review;
    char m_sign;
};

/// Explanations of energy, money, weather, heat, gravity and arrival, each in its own file.
std::string explainEnergy(const ExplainText& words, Figure figure);
std::string explainBeer(const ExplainText& words, Figure figure);
std::string explainArrival(const ExplainText& words);

/// The metered energy of a span: the rule, and "0.90 kWh (0.79 – 1.41) in 10 h".
std::string meteredText(const ExplainText& words, const analysis::EnergyFigure& energy, Span span);
std::string powerWords(const ExplainText& words, const analysis::EnergyFigure& energy);

} // namespace holdband::results
