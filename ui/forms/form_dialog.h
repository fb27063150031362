// A dialog of rows with a label and a field each, and a SaveRow at its foot. What was typed is
// never thrown away without asking, and a refusal leaves it as it is.
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
    FormDialog(Session& session, const QString& title, const QString& saveWords,
               QWidget* parent = nullptr);

    SaveRow* foot() const { return m_foot; }
    bool isDirty() const { return m_dirty; }
    void reject() override;

Q_SIGNALS:
    /// What was kept, in words.
    void kept(const QString& what);

protected:
    Session& session() const { return *m_session; }
    /// Called when the person wants to keep it.
    virtual void save() = 0;

    /// In this order: rows with their labels, or whole widgets over the full width.
    void addRow(const QString& label, QWidget* field);
    void addWide(QWidget* widget);
    void addHeading(const QString& words);
    QFormLayout* form() const { return m_form; }
    QLineEdit* makeLine(const QString& name);

    /// Says why nothing was kept and goes to the field.
    void refuse(const QString& sentence, QWidget* at);
    /// Keeps it on the worker, and closes once it is kept.
    void keep(const store::HistoryEntry& entry, std::function<Done(const store::Change&)> work);
    void setDirty();
    /// From here on what is typed counts. To be called once the fields are filled.
    void watchFields();

    /// As high as its contents, where the screen has the room; also once they have grown.
    void fitToScreen();
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void layOut();
    void standLast(QWidget& widget);
    void orderTabs();

    Session* m_session;
    QFormLayout* m_form = nullptr;
    QWidget* m_inner = nullptr;
    SaveRow* m_foot;
    bool m_dirty = false;
    bool m_watching = false;
};

} // namespace holdband::ui
