// The limits that people can meet, from the constants that set them, as a table for the help.
#pragma once

#include <QString>
#include <vector>

namespace holdband::ui {

struct Limit {
    QString what; ///< "a note, a reason, a remark"
    QString most; ///< "20,000 bytes"
};

std::vector<Limit> allLimits();

/// In Markdown.
QString limitsTable();

} // namespace holdband::ui
