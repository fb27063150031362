// As the target of the register, with the same readings in a logbook, and undo and redo after each
// change. Slow: each change is saved three times.
#include "tests/fuzz/typist.h"

namespace holdband::fuzz {

void fuzzOne(std::span<const std::uint8_t> input)
{
    typeAndChange(Bytes(input), true, 2);
}

} // namespace holdband::fuzz
