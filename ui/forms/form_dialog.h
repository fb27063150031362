// A dialog of rows with a label and a field each, and a SaveRow at the bottom. Typed text is never
// discarded without asking, and a refusal doesn't change it.
#pragma once

#include "core/store/logbook_file.h"

#include <QDialog>
#include <functional>

class QFormLayout;
class QLineEdit;
class QVBoxLayout;

namespace holdband::ui {

class SaveRow;
class Session;

class FormDialog : public QDialog {
    Q_OBJECT
public:
    FormDialog(Session& session, const QString& title, const QString& saveText,
               QWidget* parent = nullptr);

    SaveRow* foot() const { return m_foot; }
    bool isDirty() const { return m_dirty; }
    void reject() override;

Q_SIGNALS:
    /// A change was saved; `what` describes it.
    void saved(const QString& what);

protected:
    Session& session() const { return *m_session; }
    /// Called when the user wants to save.
    virtual void save() = 0;

    /// In this order: rows with their labels, or widgets over the full width.
    void addRow(const QString& label, QWidget* field);
    void addWide(QWidget* widget);
    void addHeading(const QString& words);
    QFormLayout* form() const { return m_form; }
    QLineEdit* makeLine(const QString& name);

    /// Shows why nothing was saved and focuses the field.
    void refuse(const QString& sentence, QWidget* at);
    /// Saves on the worker, and closes the dialog when that is done.
    void commitChange(const store::HistoryEntry& entry,
                      std::function<Done(const store::Change&)> work);
    void setDirty();
    /// From now on typed text counts as unsaved. Call after the fields are filled.
    void watchFields();

    /// Makes the dialog as high as its contents, if the screen is large enough; call again when
    /// they grow.
    void fitToScreen();
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void layOut();
    void placeLastInTabOrder(QWidget& widget);
    void orderTabs();

    Session* m_session;
    QFormLayout* m_form = nullptr;
    QWidget* m_inner = nullptr;
    SaveRow* m_foot;
    bool m_dirty = false;
    bool m_watching = false;
};

} // namespace holdband::ui
