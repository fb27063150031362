#include "ui/forms/number_rules.h"

#include "ui/words/words.h"

namespace holdband::ui {

QString gravityRule(double gravity)
{
    return gravity >= 0.98 && gravity <= 1.2
               ? QString()
               : Words::tr("a gravity must be between 0.980 and 1.200");
}

QString priceRule(double price)
{
    return price >= 0.0 ? QString() : Words::tr("a price can't be negative");
}

} // namespace holdband::ui
