#include "ui/window/new_settings.h"

#include "core/text/zone.h"

#include <QLocale>
#include <QTimeZone>

namespace holdband::ui {

LogbookSettings usualSettings()
{
    LogbookSettings settings;
    const std::string zone = QTimeZone::systemTimeZoneId().toStdString();
    if (Zone::named(zone))
        settings.zone = zone;
    const QLocale locale = QLocale::system();
    settings.units = locale.measurementSystem() == QLocale::ImperialUSSystem ? UnitSystem::us
                                                                             : UnitSystem::metric;
    settings.currency = locale.currencySymbol(QLocale::CurrencyIsoCode).toStdString();
    settings.timeDoubt = std::chrono::minutes{10}; // a clock read by eye, a while before typing
    return settings;
}

} // namespace holdband::ui
