// A logbook whose reports are read back.
#pragma once

#include "core/store/logbook_file.h"
#include "tests/ui/sample_window.h"
#include "ui/report/report.h"

#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace holdband::report::test {

using Rows = std::vector<QStringList>;

/// RFC 4180, strictly: every line ends in CR LF, quotes are only around and inside fields.
inline Rows parsed(const QByteArray& csv)
{
    const QString text = QString::fromUtf8(csv);
    Rows rows;
    QStringList row;
    QString field;
    bool inQuotes = false;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        const QChar next = i + 1 < text.size() ? text[i + 1] : QChar();
        if (inQuotes && c == u'"' && next == u'"') {
            field += c;
            ++i;
        } else if (c == u'"') {
            inQuotes = !inQuotes;
        } else if (!inQuotes && c == u',') {
            row << std::exchange(field, {});
        } else if (!inQuotes && c == u'\r' && next == u'\n') {
            row << std::exchange(field, {});
            rows.push_back(std::exchange(row, {}));
            ++i;
        } else {
            field += c;
        }
    }
    EXPECT_TRUE(!inQuotes && row.isEmpty() && field.isEmpty());
    return rows;
}

class ReportTest : public ui::test::WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        open(makeLogbook());
    }

    void open(const QString& logbook)
    {
        auto opened = store::LogbookFile::open(logbook.toStdString(), store::Access::read, now);
        ASSERT_TRUE(opened) << opened.error().sentence();
        m_logbook = std::move(*opened);
    }

    Document of(const std::vector<std::string>& names) const
    {
        const auto document = compose(*m_logbook, names);
        EXPECT_TRUE(document) << (document ? "" : document.error().sentence());
        return document.value_or(Document{});
    }

    QString value(const Rows& rows, const QString& part, const QString& item,
                  const QString& figure) const
    {
        for (const QStringList& row : rows) {
            if (row[1] == part && row[2] == item && row[3] == figure)
                return row[4];
        }
        return {};
    }

    std::unique_ptr<store::LogbookFile> m_logbook;
};

} // namespace holdband::report::test
