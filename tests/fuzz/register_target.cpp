// A meter's readings typed in any order, deleted, restored and corrected: the energy counted is the
// energy used.
#include "tests/fuzz/typist.h"

namespace holdband::fuzz {

void fuzzOne(std::span<const std::uint8_t> input)
{
    typeAndChange(Bytes(input), false, 16);
}

} // namespace holdband::fuzz
