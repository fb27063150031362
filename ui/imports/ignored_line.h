// One line above the rows: the columns that are ignored, but look like temperatures.
#pragma once

#include "ui/imports/log_state.h"

#include <QWidget>

class QPushButton;

namespace holdband::ui {

class ElidedLabel;

class IgnoredLine : public QWidget {
    Q_OBJECT
public:
    explicit IgnoredLine(QWidget* parent = nullptr);

    /// Hidden if there are no such columns.
    void showLog(const LogState& log);
    QString text() const;
    QPushButton* button() const { return m_button; }

Q_SIGNALS:
    void columnWanted(int column);

private:
    int m_first = 0; ///< the first such column
    ElidedLabel* m_words;
    QPushButton* m_button;
};

} // namespace holdband::ui
