// The choices for times that are numbers: what they count, and when the log began. Shown only where
// they matter.
#pragma once

#include "core/text/zone.h"
#include "ui/imports/log_state.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace holdband::ui {

class InstantField;

class ElapsedChoices : public QWidget {
    Q_OBJECT
public:
    explicit ElapsedChoices(QWidget* parent = nullptr);

    /// `zone`: that of the log's times.
    void showLog(const LogState& log, const Zone& zone);
    /// To be called after the choice of a pattern was put into the map: it needs neither.
    void fillIn(intake::ColumnMap& map) const;
    /// Focuses the control for that decision; false if there is none here.
    bool pointAt(Decision decision);
    QComboBox* unit() const { return m_unit; }
    InstantField* began() const { return m_began; }

Q_SIGNALS:
    void changed();

private:
    void showUnit(const LogState& log);
    void showStart(const LogState& log);
    void takeStart();

    intake::LogSource m_source; ///< of the log that is shown
    QString m_start;            ///< as last shown or chosen
    QComboBox* m_unit;
    QLabel* m_beganLabel = nullptr;
    InstantField* m_began;
};

} // namespace holdband::ui
