// Finds columns that a preview leaves out although they look like temperatures.
#pragma once

#include "core/intake/csv/dialect.h"
#include "core/intake/csv/preview.h"
#include "core/intake/csv/sample.h"
#include "core/quantity/temperature.h"

#include <cstddef>
#include <string_view>
#include <vector>

namespace holdband::intake {

/// A hint for people, which decides nothing. `header`: empty where the log has none; `cells`: the
/// first ones, as in the file; `unmarked`: the unit of temperatures that have none. True where
/// header or cells have a unit of temperature, where a word of the header means a temperature and
/// the numbers can be one, or where fractions around −5 … 45 °C neither rise throughout nor spread
/// widely. Never for another unit, nor for fewer numbers than other texts.
bool looksLikeTemperature(std::string_view header, const std::vector<std::string_view>& cells,
                          TemperatureUnit unmarked);

/// Sets ColumnGuess::mayBeTemperature of the columns that are ignored.
void markTemperatures(const Dialect& dialect, const SampleRows& rows, TemperatureUnit unmarked,
                      LogPreview& preview);

/// Those of the marked columns that the map still ignores, in the file's order.
std::vector<std::size_t> ignoredTemperatures(const LogPreview& preview, const ColumnMap& map);

} // namespace holdband::intake
