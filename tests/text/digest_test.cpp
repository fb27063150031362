// The digest compared with the examples that its standard publishes.
#include "core/digest.h"

#include <gtest/gtest.h>

namespace holdband::test {
namespace {

// FIPS 180-2, appendix B.1 to B.3 (the examples of SHA-256), from memory.
TEST(Digest, OfThePublishedExamples)
{
    EXPECT_EQ(digestOf("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(digestOf("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(digestOf(std::string(1'000'000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Digest, InPiecesIsThatOfTheWhole)
{
    Digest digest;
    digest.add("ab");
    digest.add("");
    digest.add("c");
    EXPECT_EQ(digest.hex(), digestOf("abc"));
    EXPECT_EQ(digest.hex(), "") << "it was taken already";
}

TEST(Digest, InPiecesIsThatOfTheWholeWhereItBecomesLong)
{
    Digest digest;
    for (int i = 0; i < 1000; ++i)
        digest.add(std::string(1000, 'a'));
    EXPECT_EQ(digest.hex(), digestOf(std::string(1'000'000, 'a')));
    EXPECT_EQ(digest.hex(), "") << "it was taken already";
}

} // namespace
} // namespace holdband::test
