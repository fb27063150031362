// Names an item of the logbook as the place of a Problem.
#pragma once

#include "core/text/phrase.h"

#include <string>
#include <string_view>

namespace holdband {

/// 'batch "House Pilsner"'
inline std::string batchPlace(std::string_view name)
{
    return Phrase::tr("batch \"%1\"").with(name);
}

inline std::string setupPlace(std::string_view name)
{
    return Phrase::tr("setup \"%1\"").with(name);
}

inline std::string sensorPlace(std::string_view name)
{
    return Phrase::tr("sensor \"%1\"").with(name);
}

inline std::string meterPlace(std::string_view name)
{
    return Phrase::tr("meter \"%1\"").with(name);
}

} // namespace holdband
