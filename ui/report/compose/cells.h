// Quantities as cells of a report's tables: text in the units of the logbook, with the user's
// decimal sign, and the raw figure with it. An absent quantity is a dash without a figure.
#pragma once

#include "core/analysis/energy_figure.h"
#include "core/analysis/money.h"
#include "core/model/equipment.h"
#include "core/text/zone.h"
#include "ui/report/compose/document.h"

#include <optional>

namespace holdband::report {

class Cells {
public:
    Cells(const LogbookSettings& settings, const Zone& zone) : m_settings(settings), m_zone(zone) {}

    Cell text(const std::string& utf8) const;
    Cell absent() const;
    Cell number(std::optional<double> value, int decimals, const QString& unit = {}) const;
    Cell count(std::size_t number) const;
    Cell share(std::optional<double> share) const; ///< raw: a fraction
    Cell instant(Instant at) const;                ///< with the year
    Cell length(std::optional<double> ms) const;   ///< raw: hours
    Cell temperature(double celsius) const;        ///< with the unit
    /// With a sign, without the unit.
    Cell difference(std::optional<double> kelvins, int decimals = 2) const;
    /// kWh for a kelvin and day of lift, in kWh/(°F·day) or kWh/(°C·day).
    Cell perDegreeDay(std::optional<double> kwh) const;
    Cell pastEdge(double kelvins) const; ///< a dash for 0
    Cell kwh(const analysis::EnergyFigure& energy) const;
    Cell leastKwh(const analysis::EnergyFigure& energy) const;
    Cell mostKwh(const analysis::EnergyFigure& energy) const;
    Cell metered(const analysis::EnergyFigure& energy) const;
    Cell watts(std::optional<double> watts) const;
    Cell money(std::optional<double> amount) const;

    /// "°F"
    QString degrees() const;
    double inUnit(double kelvins) const;
    const LogbookSettings& settings() const { return m_settings; }
    const Zone& zone() const { return m_zone; }

private:
    const LogbookSettings& m_settings;
    const Zone& m_zone;
};

/// The shortest text that reads back as the same number, with a point.
QString rawNumber(double value);

Column words(const QString& title);
Column wideWords(const QString& title);
Column figures(const QString& title, const QString& unit = {});

} // namespace holdband::report
