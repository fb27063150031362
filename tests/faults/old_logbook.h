// Logbooks of older formats, as programs of their time made them.
#pragma once

#include <string>

namespace holdband::faults {

/// With some equipment, a batch and two meter readings.
void makeOldLogbook(const std::string& path, int format);

} // namespace holdband::faults
