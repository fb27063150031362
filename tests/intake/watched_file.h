// A watched file in a logbook with the usual equipment, and short calls for tests.
#pragma once

#include "core/intake/watch/watch.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/readings.h"
#include "core/store/records/watches.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <fstream>
#include <memory>
#include <string>

namespace holdband::test {

class WatchedFile : public LogbookTest {
protected:
    void SetUp() override
    {
        m_logbook = std::move(*store::LogbookFile::create(path(), {}, [this] { return m_now; }));
        ASSERT_TRUE(m_logbook);
        addEquipment(*m_logbook);
        write("Time,Beer\n");
        watch(file());
    }

    std::string file() const { return path("probe.csv"); }
    void write(const std::string& text) const
    {
        std::ofstream(file(), std::ios::binary | std::ios::trunc) << text;
    }
    void append(const std::string& text) const
    {
        std::ofstream(file(), std::ios::binary | std::ios::app) << text;
    }
    void watch(const std::string& what) const
    {
        auto change = store::Change::begin(*m_logbook, saying("watch"));
        ASSERT_TRUE(change);
        ASSERT_TRUE(store::addWatch(*change, what, ""));
        ASSERT_TRUE(change->commit());
    }
    intake::WatchReport poll()
    {
        auto reports = intake::pollWatches(*m_logbook, m_memory);
        EXPECT_TRUE(reports) << reports.error().sentence();
        return reports && !reports->empty() ? reports->front() : intake::WatchReport{};
    }
    std::size_t readings() const
    {
        const auto series =
            store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)});
        return series ? series->at.size() : 0;
    }
    std::size_t imports() const { return store::listImports(*m_logbook)->size(); }

    Instant m_now = someday;
    std::unique_ptr<store::LogbookFile> m_logbook;
    intake::WatchMemory m_memory;
};

} // namespace holdband::test
