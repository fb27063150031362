// A small logbook in which bytes of its pages are changed: it is refused, the damage is noticed, or
// every figure is that of the undamaged file. The first byte chooses what is asked for; then come
// the changes, five bytes each: page, offset, value.
#include "app/compare_json.h"
#include "app/forecast_json.h"
#include "app/results_json.h"
#include "core/exchange/export.h"
#include "core/exchange/file_writer.h"
#include "core/exchange/load.h"
#include "core/results/comparison/side_by_side.h"
#include "core/results/forecast/next_batch.h"
#include "core/results/overview/batch_list.h"
#include "core/results/run/run_review.h"
#include "core/store/safety/soundness.h"
#include "tests/fuzz/fuzz_one.h"
#include "tests/fuzz/small_logbook.h"

#include <QTemporaryDir>
#include <array>
#include <filesystem>
#include <fstream>

namespace holdband::fuzz {

namespace {

constexpr std::size_t pageSize = 4096;
constexpr std::size_t mostChanges = 64;
constexpr std::size_t mostExported = 1 << 22; // bytes

using Asking = Result<std::string> (*)(const store::LogbookFile& logbook);

Result<std::string> verdictOf(const store::LogbookFile& logbook)
{
    auto review = results::reviewRun(logbook, "A1");
    HOLDBAND_TRY(review);
    return app::verdictJson(*review) + app::energyJson(*review);
}

Result<std::string> comparisonOf(const store::LogbookFile& logbook)
{
    auto review = results::reviewSideBySide(logbook, "A1", "B1");
    HOLDBAND_TRY(review);
    return app::compareJson(*review);
}

Result<std::string> setupsOf(const store::LogbookFile& logbook)
{
    auto review = results::reviewSideBySide(logbook, "A", "B");
    HOLDBAND_TRY(review);
    return app::compareJson(*review);
}

Result<std::string> forecastOf(const store::LogbookFile& logbook)
{
    results::NextBatchRequest request;
    auto plan = results::planLike(logbook, "A1");
    HOLDBAND_TRY(plan);
    request.plan = std::move(*plan);
    request.room = analysis::TypedRoom{24.0, 2.0};
    auto review = results::reviewNextBatch(logbook, request);
    HOLDBAND_TRY(review);
    return app::forecastJson(*review);
}

Result<std::string> batchesOf(const store::LogbookFile& logbook)
{
    auto review = results::reviewBatches(logbook);
    HOLDBAND_TRY(review);
    return app::batchesJson(*review);
}

Result<std::string> exportOf(const store::LogbookFile& logbook)
{
    const QTemporaryDir folder;
    const std::string out = folder.filePath(QStringLiteral("out")).toStdString();
    HOLDBAND_TRY(exchange::exportLogbook(logbook, out));
    std::string all;
    for (const char* file : {"/logbook.json", "/readings/0001.csv", "/readings/0002.csv"}) {
        auto text = exchange::readWholeFile(out + file, mostExported);
        HOLDBAND_TRY(text);
        all += *text;
    }
    return all;
}

constexpr std::array<Asking, 6> questions{verdictOf,  comparisonOf, setupsOf,
                                          forecastOf, batchesOf,    exportOf};

/// The undamaged file, made once, and its answers.
struct Undamaged {
    std::string bytes;
    std::array<std::string, questions.size()> answers;
};

class Trial {
public:
    Trial()
    {
        const SmallLogbook small;
        m_undamaged.bytes = small.bytes();
        write(m_undamaged.bytes);
        const auto logbook = store::LogbookFile::open(path(), store::Access::read, smallLogbookNow);
        expect(logbook.has_value(), "the undamaged logbook can be opened");
        for (std::size_t i = 0; i < questions.size(); ++i) {
            const auto answer = questions[i](**logbook);
            expect(answer.has_value(), "the undamaged logbook has figures",
                   answer ? std::string() : answer.error().sentence());
            m_undamaged.answers[i] = *answer;
        }
    }

    void run(Bytes bytes) const
    {
        const std::size_t question = bytes.byte() % questions.size();
        const std::string damaged = damagedBy(bytes);
        write(damaged);
        const auto logbook = store::LogbookFile::open(path(), store::Access::read, smallLogbookNow);
        if (!logbook)
            return expect(damaged != m_undamaged.bytes, "a sound logbook can be opened");
        const auto answer = questions[question](**logbook);
        // The commands and the window check the seal first, and a damaged file is still exported.
        const bool sealed = store::checkSeal((*logbook)->database()).has_value();
        const auto damage = store::findDamage(**logbook);
        const bool noticed =
            !sealed || !damage || (questions[question] == exportOf && !damage->empty());
        expect(answer ? noticed || *answer == m_undamaged.answers[question]
                      : damaged != m_undamaged.bytes,
               "a damaged logbook is noticed or gives the same figures",
               "question " + std::to_string(question) + "\n" +
                   (answer ? *answer : answer.error().sentence()));
        expect(damaged != m_undamaged.bytes || (sealed && damage && damage->empty()),
               "an undamaged logbook is sound");
    }

private:
    std::string path() const
    {
        return m_folder.filePath(QStringLiteral("f.holdband")).toStdString();
    }
    void write(const std::string& bytes) const
    {
        std::ofstream file(path(), std::ios::binary | std::ios::trunc);
        file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    }
    std::string damagedBy(Bytes& bytes) const
    {
        std::string damaged = m_undamaged.bytes;
        const std::size_t pages = damaged.size() / pageSize;
        for (std::size_t i = 0; i < mostChanges && !bytes.atEnd(); ++i) {
            const std::size_t page = bytes.below(pages);
            const std::size_t offset = bytes.below(pageSize);
            damaged[page * pageSize + offset] = static_cast<char>(bytes.byte());
        }
        return damaged;
    }

    QTemporaryDir m_folder;
    Undamaged m_undamaged;
};

} // namespace

void fuzzOne(std::span<const std::uint8_t> input)
{
    static const Trial trial;
    trial.run(Bytes(input));
}

} // namespace holdband::fuzz
