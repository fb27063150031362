// Any bytes as a description: where it can be read, writing it, reading that and writing again
// gives the same bytes. Inputs of every fourth length are loaded into a logbook too, which is
// exported, loaded and exported again.
#include "core/exchange/description.h"
#include "core/exchange/export.h"
#include "core/exchange/file_writer.h"
#include "core/exchange/load.h"
#include "tests/fuzz/fuzz_one.h"

#include <QTemporaryDir>
#include <fstream>

namespace holdband::fuzz {

namespace {

constexpr std::int64_t mostBytes = 1 << 22;

class Loading {
public:
    explicit Loading(const std::string& description)
    {
        std::ofstream(path("d.json"), std::ios::binary) << description;
    }

    void run() const
    {
        if (!exchange::loadDescription(path("one.holdband"), path("d.json"), now))
            return;
        exportTo("one");
        const auto again =
            exchange::loadDescription(path("two.holdband"), path("one/logbook.json"), now);
        expect(again.has_value(), "an exported logbook can be loaded",
               again ? std::string() : again.error().sentence());
        exportTo("two");
        expect(exported("one") == exported("two"), "it exports the same again",
               exported("one") + "\n--\n" + exported("two"));
    }

private:
    static Instant now() { return instantFromMs(1'790'000'000'000); }

    std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    void exportTo(const std::string& name) const
    {
        const auto logbook =
            store::LogbookFile::open(path(name + ".holdband"), store::Access::read, now);
        expect(logbook.has_value(), "a loaded logbook can be opened");
        const Done written = exchange::exportLogbook(**logbook, path(name));
        expect(written.has_value(), "a loaded logbook can be exported",
               written ? std::string() : written.error().sentence());
    }
    std::string exported(const std::string& name) const
    {
        const auto text = exchange::readWholeFile(path(name + "/logbook.json"), mostBytes);
        expect(text.has_value(), "an exported description can be read");
        return *text;
    }

    QTemporaryDir m_folder;
};

} // namespace

void fuzzOne(std::span<const std::uint8_t> input)
{
    const std::string text(Bytes(input).rest());
    const auto first = exchange::parseDescription(text, "d.json");
    if (!first) {
        expect(!first.error().what.empty(), "a problem has a sentence");
        return;
    }
    const std::string written = exchange::writeDescription(*first);
    const auto second = exchange::parseDescription(written, "d.json");
    expect(second.has_value(), "a written description can be read",
           second ? std::string() : second.error().sentence() + "\n" + written);
    const std::string again = exchange::writeDescription(*second);
    expect(written == again, "it is written the same again", written + "\n--\n" + again);
    if (input.size() % 4 == 0)
        Loading(text).run();
}

} // namespace holdband::fuzz
