#include "ui/forms/manner.h"

#include "ui/words/words.h"

namespace holdband::ui {

Manner mannerOf(const LogbookSettings& settings, const Zone& zone)
{
    return {settings.units, settings.currency, zone, decimalSign()};
}

} // namespace holdband::ui
