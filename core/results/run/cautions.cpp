#include "core/results/run/cautions.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

namespace holdband::results {

namespace {

bool speaksOf(const std::string& kind, std::initializer_list<const char*> words)
{
    for (const char* word : words) {
        if (kind.find(word) != std::string::npos)
            return true;
    }
    return false;
}

} // namespace

std::vector<std::string> cautionsFor(const Setup& setup)
{
    const std::string kind = folded(setup.kind);
    std::vector<std::string> cautions{
        Phrase::tr("Mains power near liquid: plug into a GFCI (RCD) outlet, keep meters and plugs "
                   "off the floor and give cables a drip loop."),
        Phrase::tr("One plugged-in load takes at most 80 % of its circuit: 12 A on 15 A."),
    };
    const auto add = [&cautions](std::string caution) { cautions.push_back(std::move(caution)); };
    if (speaksOf(kind, {"loop", "glycol", "coolant", "chiller", "glykol", "kreislauf"}))
        add(Phrase::tr("Coolant near beer is propylene glycol and water, never ethylene glycol."));
    if (speaksOf(kind, {"cabinet", "freezer", "fridge", "refrigerator", "chamber", "keezer",
                        "schrank", "truhe", "kammer"})) {
        add(Phrase::tr("A closed cabinet fills with carbon dioxide: air it before you lean in."));
        add(Phrase::tr(
            "A full fermenter weighs over 20 kg (44 lb): do not lift it over an edge alone."));
    }
    add(Phrase::tr("Carbon dioxide gathers in closed and low rooms: let air through."));
    add(Phrase::tr("Sealed refrigeration circuits are opened by certified people only; local codes "
                   "and licensed practice decide."));
    return cautions;
}

} // namespace holdband::results
