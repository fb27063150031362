// Quantities as cells of a report's tables: text in the units of the logbook, with the user's
// decimal sign, and with it the raw figure in the units of the JSON answers (°C, K, h, kWh, W,
// shares as fractions), whatever the logbook's. An absent quantity is a dash without a figure.
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
    Cell span(Span span) const;                    ///< raw: an interval after ISO 8601
    Cell temperature(double celsius) const;        ///< with the unit
    /// With a sign, without the unit.
    Cell difference(std::optional<double> kelvins, int decimals = 2) const;
    /// kWh for each kelvin and day of lift; the text without the unit.
    Cell perDegreeDay(std::optional<double> kwh) const;
    Cell pastEdge(double kelvins) const; ///< a dash for 0
    Cell kwh(const analysis::EnergyFigure& energy) const;
    Cell leastKwh(const analysis::EnergyFigure& energy) const;
    Cell mostKwh(const analysis::EnergyFigure& energy) const;
    Cell metered(const analysis::EnergyFigure& energy) const;
    Cell watts(std::optional<double> watts) const;
    Cell money(std::optional<double> amount) const;

    /// A column of differences: "mean deviation, °F" on pages, "mean deviation" in K in the CSV.
    Column differences(const char* id, const QString& name) const;

    /// "°F"
    QString degrees() const;
    const LogbookSettings& settings() const { return m_settings; }
    const Zone& zone() const { return m_zone; }

private:
    double inUnit(double kelvins) const;

    const LogbookSettings& m_settings;
    const Zone& m_zone;
};

/// The shortest text that reads back as the same number, with a point.
QString rawNumber(double value);

/// A cell with another text for people.
Cell worded(Cell cell, const QString& text);

/// `id` is not a QString, so that it can't be made from a translated text.
Column words(const char* id, const QString& title);
Column wideWords(const char* id, const QString& title);
/// `unit`: of the raw figures; empty where the cells name it, as for money.
Column figures(const char* id, const QString& title, const QString& unit = {});

} // namespace holdband::report
