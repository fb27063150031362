// Adds a remark with its time, to a batch or to the logbook.
#pragma once

#include "core/text/zone.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace holdband::ui {

class Session;

class NoteDialog : public QDialog {
    Q_OBJECT
public:
    /// `batch`: the one chosen first. `at`: its time, if that is not now.
    NoteDialog(Session& session, const QString& batch, QWidget* parent = nullptr,
               std::optional<Instant> at = std::nullopt);

    QLineEdit* time() const { return m_time; }
    QComboBox* batch() const { return m_batch; }
    QPlainTextEdit* text() const { return m_text; }
    QString message() const;
    void save();
    void reject() override;

private:
    void layOut();
    void fetch(const QString& batch);
    void refuse(const QString& words, QWidget* field);

    Session* m_session;
    std::optional<Instant> m_at;
    Zone m_zone;
    QLineEdit* m_time;
    QComboBox* m_batch;
    QPlainTextEdit* m_text;
    QLabel* m_message;
    bool m_leaveAsked = false;
};

} // namespace holdband::ui
