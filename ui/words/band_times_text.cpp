#include "ui/words/band_times_text.h"

#include "ui/words/words.h"

namespace holdband::ui {

QString dwellTip()
{
    return Words::tr("The beer is settled once it has stayed in the band for this long; 0: as soon "
                     "as it comes in.");
}

QString returnTip()
{
    return Words::tr("An excursion ends once the beer has been back in the band for this long; "
                     "shorter returns are part of it.");
}

} // namespace holdband::ui
