#include "ui/forms/unit_format.h"

#include "ui/words/words.h"

namespace holdband::ui {

UnitFormat unitFormatOf(const LogbookSettings& settings, const Zone& zone)
{
    return {settings.units, settings.currency, zone, decimalSign()};
}

} // namespace holdband::ui
