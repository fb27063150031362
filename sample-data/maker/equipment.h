// The parts of the description that don't depend on the model: the equipment, which file has which
// sensor, the journal. Each is a list of JSON members without the last comma.
#pragma once

namespace holdband::sample {

const char* equipmentText();
const char* filesText();
const char* exclusionsText();
const char* journalText();

} // namespace holdband::sample
