// Logs packed as gzip or zip.
#include "core/digest.h"
#include "core/intake/container/limits.h"
#include "core/intake/container/zip_archive.h"
#include "core/intake/csv/source_file.h"
#include "tests/intake/log_files.h"
#include "tests/intake/packing.h"

#include <gmock/gmock.h>

namespace holdband::test {
namespace {

const std::string beerLog = "Time,Beer\n2026-03-08 00:00,68.5\n2026-03-08 01:00,68.25\n";

class PackedLog : public LogFiles {
protected:
    void expectBeer(const std::string& bytes, const std::string& name) const
    {
        const auto log = readLog(request(write(bytes, name)));
        ASSERT_TRUE(log) << name << ": " << log.error().sentence();
        EXPECT_EQ(log->columns.at(0).raw, (Values{68.5, 68.25})) << name;
        EXPECT_EQ(log->columns.at(0).line, (std::vector<std::uint32_t>{2, 3})) << name;
        EXPECT_EQ(log->fileName, name);
        EXPECT_EQ(log->sha256, digestOf(bytes)) << "that of the file's own bytes";
    }

    /// From memory, which is faster than a file.
    Outcome readBytes(const std::string& bytes) const
    {
        LogRequest wanted = request("p.csv");
        wanted.text = std::make_shared<const std::string>(bytes);
        return readLog(wanted);
    }

    /// The sentence of the problem, "" if there is none.
    std::string refusal(const std::string& bytes) const
    {
        const auto log = readBytes(bytes);
        return log ? std::string{} : log.error().sentence();
    }
};

TEST_F(PackedLog, GzipAndZipAreRecognisedByTheirBytesNotTheirNames)
{
    expectBeer(gzipped(beerLog), "beer.csv.gz");
    expectBeer(gzipped(beerLog), "beer.csv");
    expectBeer(zipped({{"beer.csv", beerLog}}), "beer.zip");
    expectBeer(zipped({{"beer.csv", beerLog}}), "beer.csv");
    expectBeer(zipped({{"beer.csv", beerLog, 0}}), "stored.zip");
    expectBeer(beerLog, "plain.csv.gz");
    expectBeer(beerLog, "plain.zip");
}

TEST_F(PackedLog, GzipMembersFollowEachOtherAndZerosMayFillTheEnd)
{
    const std::string header = beerLog.substr(0, beerLog.find('\n') + 1);
    const std::string rows = beerLog.substr(header.size());
    expectBeer(gzipped(header) + gzipped(rows), "two.gz");
    expectBeer(gzipped(beerLog) + std::string(512, '\0'), "tape.gz");
}

TEST_F(PackedLog, FoldersHiddenFilesAndNamesThatLeadOutsideDoNoHarm)
{
    expectBeer(zipped({{"logs/", ""}, {"logs/beer.csv", beerLog}}), "folder.zip");
    expectBeer(zipped({{"../../beer.csv", beerLog}}), "outside.zip");
    expectBeer(zipped({{"beer.csv", beerLog}, {"__MACOSX/._beer.csv", "x"}, {".thumbs", "y"}}),
               "hidden.zip");
}

TEST_F(PackedLog, AnyTextInAnyEncodingIsReadAsIfItWereNotPacked)
{
    expectBeer(gzipped("\xEF\xBB\xBF" + beerLog), "mark.gz");
    std::string european = beerLog;
    std::replace(european.begin(), european.end(), ',', ';');
    expectBeer(zipped({{"beer.csv", european}}), "semicolons.zip");
}

TEST_F(PackedLog, ALongLogIsTheSameAsUnpacked)
{
    std::string text = "Time,Beer,Note\n";
    for (int i = 0; i < 12'000; ++i)
        text += std::to_string(1'772'928'000 + 60 * i) + "," +
                std::to_string(60 + i * 7919 % 1000) + ".5," +
                std::string(100, static_cast<char>('a' + i % 26)) + "\n";
    ASSERT_GT(text.size(), SourceFile::pieceSize);
    const auto plain = readLog(request(write(text, "plain.csv")));
    for (const std::string& bytes : {gzipped(text), zipped({{"beer.csv", text}})}) {
        const auto log = readLog(request(write(bytes, "long.csv")));
        ASSERT_TRUE(log) << log.error().sentence();
        EXPECT_EQ(log->columns.at(0).raw, plain->columns.at(0).raw);
        EXPECT_EQ(log->columns.at(0).at, plain->columns.at(0).at);
        EXPECT_EQ(log->rejectedTotal, plain->rejectedTotal);
    }
}

TEST_F(PackedLog, AnArchiveOfSeveralFilesIsRefusedWithTheirNames)
{
    EXPECT_EQ(
        refusal(zipped({{"july/beer.csv", beerLog}, {"july/air.csv", beerLog}})),
        "p.csv: the archive holds 2 files: july/beer.csv, july/air.csv; unpack it, and import "
        "the logs among them.");
    std::vector<ZippedFile> many;
    for (int i = 0; i < 30; ++i)
        many.push_back({std::to_string(i) + ".csv", beerLog});
    EXPECT_THAT(refusal(zipped(many)), testing::HasSubstr("19.csv and 10 more; unpack"));
}

TEST_F(PackedLog, EmptyArchivesAreRefused)
{
    EXPECT_EQ(refusal(zipped({})), "p.csv: the archive is empty.");
    EXPECT_EQ(refusal(zipped({{"logs/", ""}})), "p.csv: the archive holds only folders.");
    EXPECT_EQ(refusal(zipped({{"beer.csv", ""}})), "p.csv: the file is empty.");
    EXPECT_EQ(refusal(gzipped("")), "p.csv: the file is empty.");
}

TEST_F(PackedLog, ArchivesInArchivesAreRefused)
{
    const std::string inner = zipped({{"beer.csv", beerLog}});
    EXPECT_EQ(refusal(zipped({{"beer.zip", inner}})),
              "p.csv, beer.zip: this is an archive inside an archive; unpack it first.");
    EXPECT_THAT(refusal(gzipped(inner)), testing::HasSubstr("an archive inside an archive"));
    EXPECT_THAT(refusal(gzipped(gzipped(beerLog))),
                testing::HasSubstr("an archive inside an archive"));
    std::string tar(257, 'x');
    EXPECT_THAT(refusal(gzipped(tar + "ustar  " + tar)),
                testing::HasSubstr("an archive inside an archive"));
}

TEST_F(PackedLog, ProtectedOnesAndOtherKindsSayWhatToDo)
{
    EXPECT_EQ(refusal(zipped({{"beer.csv", beerLog, 8, 1}})),
              "p.csv, beer.csv: the file has a password; unpack it first.");
    EXPECT_EQ(
        refusal(zipped({{"beer.csv", beerLog, 14}})),
        "p.csv, beer.csv: the file is packed in a way that can't be read; unpack it first, or "
        "pack it as gzip or zip.");
    EXPECT_THAT(refusal("BZh91AY&SY" + beerLog), testing::HasSubstr("unpack it first"));
    EXPECT_THAT(refusal("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1" + beerLog),
                testing::HasSubstr("save it as .xlsx without a password, or as CSV"));
}

TEST_F(PackedLog, EveryCutIsNoticed)
{
    for (const std::string& whole : {gzipped(beerLog), zipped({{"beer.csv", beerLog}})}) {
        for (std::size_t size = 4; size < whole.size(); ++size) {
            const std::string sentence = refusal(whole.substr(0, size));
            EXPECT_THAT(sentence, testing::StartsWith("p.csv, ")) << size;
            EXPECT_THAT(sentence, testing::HasSubstr("byte ")) << size;
        }
    }
}

TEST_F(PackedLog, EveryChangedByteIsNoticedOrChangesNoReading)
{
    for (const std::string& whole : {gzipped(beerLog), zipped({{"beer.csv", beerLog}})}) {
        for (std::size_t at = 0; at < whole.size(); ++at) {
            std::string bytes = whole;
            bytes[at] = static_cast<char>(bytes[at] ^ 0x21);
            const auto log = readBytes(bytes);
            if (log)
                EXPECT_EQ(log->columns.at(0).raw, (Values{68.5, 68.25})) << at;
            else
                EXPECT_THAT(log.error().sentence(), testing::StartsWith("p.csv")) << at;
        }
    }
}

TEST_F(PackedLog, AWrongChecksumIsRefusedWithTheFileInTheArchive)
{
    EXPECT_THAT(refusal(zipped({{"logs/beer.csv", beerLog, 8, 0, 1}})),
                testing::StartsWith("p.csv, logs/beer.csv, byte "));
}

/// Why it stops unpacking; "" if it comes to the end.
std::string refusalOf(Unpacker& unpacker)
{
    std::string buffer(std::size_t{1} << 20, '\0');
    for (;;) {
        const auto filled = unpacker.read(buffer.data(), buffer.size());
        if (!filled)
            return filled.error().sentence();
        if (*filled < buffer.size())
            return {};
    }
}

TEST(Unpacking, WhatWouldFillTheMemoryIsRefused)
{
    const std::string lines(static_cast<std::size_t>(suspiciousSize) + (4 << 20), '\n');
    for (const std::string& bytes :
         {gzipped(lines), gzipped(beerLog) + gzipped(lines), gzipped(lines + beerLog)}) {
        Unpacker unpacker({bytes});
        EXPECT_THAT(refusalOf(unpacker), testing::HasSubstr("more than 200 times its size"));
    }
    const std::string archive = zipped({{"beer.csv", lines}});
    const auto entries = zipEntries(archive);
    ASSERT_TRUE(entries);
    EXPECT_THAT(refusalOf(**unpackEntry(archive, entries->front())),
                testing::HasSubstr("more than 200 times its size"));
}

} // namespace
} // namespace holdband::test
