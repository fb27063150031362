// Chooses the sheet of a workbook that has several.
#pragma once

#include "ui/imports/log_state.h"

#include <QWidget>

class QComboBox;

namespace holdband::ui {

class SheetChoice : public QWidget {
    Q_OBJECT
public:
    explicit SheetChoice(QWidget* parent = nullptr);

    /// Hidden if there is nothing to choose.
    void showLog(const LogState& log);
    QComboBox* box() const { return m_box; }

Q_SIGNALS:
    void chosen(const QString& sheet);

private:
    QComboBox* m_box;
    QString m_current;
};

} // namespace holdband::ui
