// The journal of a batch, or of the logbook: its notes in order of time, to be edited or deleted.
// Unsaved text of one note is not lost while others are viewed.
#pragma once

#include "core/store/records/journal.h"
#include "core/text/zone.h"

#include <QDialog>
#include <map>

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTableView;

namespace holdband::ui {

class Session;
class TableModel;

/// The data of the dialog, read at once.
struct JournalView {
    Zone zone;
    std::vector<std::string> batches;
    std::vector<store::StoredNote> notes; ///< of the chosen batch, in order of time
};

/// Opens the dialog, which is deleted when closed. `batch`: the one shown first, empty for all
/// notes. Does nothing without an open logbook.
void openJournal(QWidget* parent, Session& session, const QString& batch);

class JournalDialog : public QDialog {
    Q_OBJECT
public:
    JournalDialog(Session& session, const QString& batch, QWidget* parent = nullptr);

    TableModel* notes() const { return m_notes; }
    QTableView* table() const { return m_table; }
    QComboBox* batch() const { return m_batch; }
    QLineEdit* time() const { return m_time; }
    QPlainTextEdit* text() const { return m_text; }
    QPushButton* saveButton() const { return m_save; }
    QPushButton* removeButton() const { return m_remove; }
    QString message() const;

    void refresh();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// Unsaved text of a note.
    struct Draft {
        QString time;
        QString text;
        bool operator==(const Draft&) const = default;
    };

    void layOut();
    void connectParts();
    void take(JournalView view);
    void fillBatches();
    void showNote(int row);
    void rememberDraft();
    Draft storedText(const store::StoredNote& note) const;
    const store::StoredNote* current() const;
    void save();
    void takeSaved(store::NoteId id, const JournalNote& note);
    void remove();
    void say(const QString& words);

    Session* m_session;
    JournalView m_view;
    QString m_wanted; ///< batch; empty: all notes
    std::optional<store::NoteId> m_shown;
    std::map<std::int64_t, Draft> m_drafts; ///< by the note's id
    TableModel* m_notes;
    QComboBox* m_batch;
    QTableView* m_table;
    QLineEdit* m_time;
    QPlainTextEdit* m_text;
    QPushButton* m_save;
    QPushButton* m_remove;
    QLabel* m_message;
};

} // namespace holdband::ui
