// The choices for a log: delimiter, header line, zone, order of the dates or a custom pattern,
// decimal sign, what numbers that are times count, and why a register fell. Each with the detected
// value and the reason.
#pragma once

#include "core/text/zone.h"
#include "ui/imports/log_state.h"

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace holdband::ui {

class ElapsedChoices;
class ElidedLabel;
class LayoutChoices;

class LogChoices : public QWidget {
    Q_OBJECT
public:
    explicit LogChoices(QWidget* parent = nullptr);

    /// `zone`: the logbook’s.
    void showLog(const LogState& log, const Zone& zone);
    /// Puts the choices into the map; its columns are not changed.
    void fillIn(intake::ColumnMap& map) const;
    /// Focuses the control for that decision; false if there is none here.
    bool pointAt(Decision decision);
    LayoutChoices* layoutChoices() const { return m_layout; }
    ElapsedChoices* elapsed() const { return m_elapsed; }
    QComboBox* dateOrder() const { return m_order; }
    QComboBox* zone() const { return m_zone; }
    QComboBox* decimalSign() const { return m_sign; }
    QComboBox* registerDrop() const { return m_drop; }
    QLineEdit* pattern() const { return m_pattern; }
    /// The result of checking the pattern while it is typed.
    QString patternText() const;

    void showPatternCheck(const Result<std::vector<PatternTry>>& tries);

Q_SIGNALS:
    void changed();
    void registerDropChosen(holdband::MeterEvent event);
    /// While a pattern is typed: check it.
    void patternTyped(const QString& pattern);

private:
    QWidget* field(const QString& label, QWidget* control, ElidedLabel* reason = nullptr);
    void fillZones();
    void showPattern();
    bool patternChosen() const;

    LayoutChoices* m_layout;
    ElapsedChoices* m_elapsed;
    QComboBox* m_zone;
    QComboBox* m_order;
    QComboBox* m_sign;
    QComboBox* m_drop;
    QLineEdit* m_pattern;
    ElidedLabel* m_patternWords;
    QWidget* m_signField;
    QWidget* m_dropField;
    QWidget* m_patternField;
};

} // namespace holdband::ui
