// One flipped bit in a logbook, in every page and in every field of the file's header, and then
// every command that reads and some that write: the damage is noticed or harmless. No figure is
// different without a word, nothing crashes, nothing hangs.
//
// The quick set flips one bit of each page (of every second one in the larger logbook), and writes
// after every third flip; HOLDBAND_FAULTS=long flips 24 and every bit of the header, and always
// writes.
#include "tests/damage/damaged_copy.h"
#include "tests/faults/long_set.h"
#include "tests/results/forecast_garage.h"

#include <cstdio>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <memory>
#include <random>

namespace holdband::damage {
namespace {

using faults::wantsLongSet;
using test::DescribedLogbook;
using test::ForecastGarage;

constexpr int mostShown = 6;
constexpr std::size_t headerBytes = 100; ///< https://www.sqlite.org/fileformat.html, section 1.3

std::string bytesOf(const std::string& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Two setups with batches enough for every figure.
World figures()
{
    ForecastGarage garage;
    garage.setups = {{"Loop", {22.0, 24.0, 25.0}}, {"Cabinet", {22.0, 24.0, 26.0}, 0.8}};
    garage.hoursApart = 300;
    const DescribedLogbook made;
    garage.loadInto(made);
    World world;
    world.name = "figures";
    world.logbook = bytesOf(made.path("d.holdband"));
    world.reads = {
        {"batches", "LOGBOOK", "--json"},
        {"verdict", "LOGBOOK", "Loop 1", "--json"},
        {"verdict", "LOGBOOK", "Cabinet 3", "--json"},
        {"energy", "LOGBOOK", "Loop 2", "--json"},
        {"compare", "LOGBOOK", "Loop", "Cabinet", "--json"},
        {"forecast", "LOGBOOK", "--like", "Loop 1", "--room", "24", "--json"},
        {"check", "LOGBOOK"},
        {"export", "LOGBOOK", "FOLDER/exported"},
    };
    world.files = {
        {"more.csv", "Time,Loop beer (C)\n2026-05-30 00:00,18\n2026-05-30 01:00,18.5\n"}};
    world.writes = {
        {"meter", "LOGBOOK", "Loop meter", "90", "--at", "2026-05-30 00:00"},
        {"import", "LOGBOOK", "FOLDER/more.csv"},
    };
    return world;
}

/// Something in every table.
World everything()
{
    const DescribedLogbook made;
    for (const std::string name : {"withdrawn.csv", "everything.csv"})
        made.write(name, bytesOf(HOLDBAND_DAMAGE_DIR "/" + name));
    made.load(bytesOf(HOLDBAND_DAMAGE_DIR "/everything.json"), "2026-04-01T00:00:00Z");
    World world;
    world.name = "everything";
    world.logbook = bytesOf(made.path("d.holdband"));
    world.reads = {
        {"batches", "LOGBOOK", "--json"},
        {"verdict", "LOGBOOK", "Pale 1", "--json"},
        {"energy", "LOGBOOK", "Pale 1", "--json"},
        {"compare", "LOGBOOK", "Pale 1", "Pale 2", "--json"},
        {"check", "LOGBOOK"},
        {"export", "LOGBOOK", "FOLDER/exported"},
    };
    world.files = {{"more.csv", "Time,Beer (C)\n2026-03-25 00:00,18\n2026-03-25 01:00,18.5\n"}};
    world.writes = {
        {"meter", "LOGBOOK", "Meter", "21", "--at", "2026-03-25 00:00"},
        {"import", "LOGBOOK", "FOLDER/more.csv"},
    };
    return world;
}

using MakeWorld = World (*)();

class FlippedBit : public ::testing::TestWithParam<MakeWorld> {
protected:
    void SetUp() override { m_copy = std::make_unique<DamagedCopy>(GetParam()()); }
    void TearDown() override
    {
        std::printf("%s: %zu pages, %d flips noticed, %d harmless\n", m_copy->world().name.c_str(),
                    m_copy->pages(), m_copy->noticed(), m_copy->harmless());
        if (m_wrong > mostShown)
            ADD_FAILURE() << "and " << m_wrong - mostShown << " more";
    }

    void flip(std::size_t bit)
    {
        const std::string wrong = m_copy->flip(bit, wantsLongSet() || m_flips++ % 3 == 0);
        if (!wrong.empty() && ++m_wrong <= mostShown)
            ADD_FAILURE() << wrong;
    }

    /// Of a page: in its own header, its pointers to cells, the cells at its end, or anywhere.
    std::size_t bitOf(std::size_t page, int kind)
    {
        const std::size_t size = m_copy->pageSize();
        const std::size_t start = page == 0 ? headerBytes : 0;
        const auto between = [&](std::size_t first, std::size_t end) {
            return std::uniform_int_distribution<std::size_t>(8 * first, 8 * end - 1)(m_random);
        };
        const std::size_t within = kind == 0   ? between(start, start + 12)
                                   : kind == 1 ? between(start + 8, start + 40)
                                   : kind == 2 ? between(size - size / 8, size)
                                               : between(start, size);
        return 8 * size * page + within;
    }

    std::unique_ptr<DamagedCopy> m_copy;
    std::mt19937_64 m_random{20'260'307};
    int m_wrong = 0;
    int m_flips = 0;
};

TEST_P(FlippedBit, InAPageIsNoticedOrHarmless)
{
    const int flips = wantsLongSet() ? 24 : 1;
    const std::size_t step = wantsLongSet() || m_copy->pages() < 70 ? 1 : 2;
    for (std::size_t page = 0; page < m_copy->pages(); page += step) {
        for (int each = 0; each < flips; ++each)
            flip(bitOf(page, static_cast<int>((page / step + static_cast<std::size_t>(each)) % 4)));
    }
}

TEST_P(FlippedBit, InTheHeaderIsNoticedOrHarmless)
{
    for (std::size_t bit = 0; bit < 8 * headerBytes; ++bit) {
        if (wantsLongSet() || bit % 37 == 0)
            flip(bit);
    }
}

INSTANTIATE_TEST_SUITE_P(Of, FlippedBit, ::testing::Values(figures, everything),
                         [](const auto& world) {
                             return world.index == 0 ? "Figures" : "Everything";
                         });

} // namespace
} // namespace holdband::damage
