#include "ui/report/compose/document.h"

#include "ui/words/words.h"

namespace holdband::report {

const Figure* Document::figure() const
{
    for (const Block& block : blocks) {
        if (const auto* found = std::get_if<Figure>(&block))
            return found;
    }
    return nullptr;
}

QString moreRows(std::size_t count)
{
    return ui::Words::tr("And %1 more; a report of the figures (CSV) has them all.").arg(count);
}

} // namespace holdband::report
