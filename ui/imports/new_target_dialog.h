// Adds a sensor or a meter for a column that has none yet.
#pragma once

#include "core/problem.h"

#include <QDialog>
#include <QStringList>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace holdband::ui {

class Session;

class NewTargetDialog : public QDialog {
    Q_OBJECT
public:
    enum class Kind { sensor, meter };

    NewTargetDialog(Session& session, Kind kind, const QString& name, QWidget* parent = nullptr);

    QLineEdit* name() const { return m_name; }
    QComboBox* reads() const { return m_reads; }
    QComboBox* setup() const { return m_setup; }
    QString message() const;
    void accept() override;

Q_SIGNALS:
    /// It was saved; the dialog closes.
    void made(const QString& name);

private:
    void fetchSetups();
    void takeSetups(const QStringList& setups);
    void refuse(const Problem& problem);

    Session* m_session;
    Kind m_kind;
    QLineEdit* m_name;
    QComboBox* m_reads;
    QComboBox* m_setup;
    QLabel* m_message;
    QPushButton* m_make;
};

} // namespace holdband::ui
