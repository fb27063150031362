// A logbook made from a description and logs in the test, with a fixed clock.
#pragma once

#include "core/exchange/load.h"
#include "core/text/times.h"

#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace holdband::test {

class DescribedLogbook {
public:
    std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }

    void write(const std::string& name, const std::string& text) const
    {
        QFile file(QString::fromStdString(path(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(text.data(), static_cast<qint64>(text.size())),
                  static_cast<qint64>(text.size()));
    }

    /// Loads the description and opens the logbook for reading, at that time.
    std::unique_ptr<store::LogbookFile> load(const std::string& description,
                                             const std::string& now) const
    {
        write("d.json", description);
        const auto at = parseRfc3339(now);
        EXPECT_TRUE(at) << now;
        const auto clock = [at] { return *at; };
        const auto loaded = exchange::loadDescription(path("d.holdband"), path("d.json"), clock);
        EXPECT_TRUE(loaded) << loaded.error().sentence();
        auto logbook = store::LogbookFile::open(path("d.holdband"), store::Access::read, clock);
        EXPECT_TRUE(logbook) << logbook.error().sentence();
        return logbook ? std::move(*logbook) : nullptr;
    }

private:
    QTemporaryDir m_folder;
};

} // namespace holdband::test
