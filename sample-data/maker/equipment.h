// The parts of the description that the model does not move: what stands in the room, which file
// holds which sensor, what was noted. Each is a run of JSON members without the last comma.
#pragma once

namespace holdband::sample {

const char* equipmentText();
const char* filesText();
const char* exclusionsText();
const char* journalText();

} // namespace holdband::sample
