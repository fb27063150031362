// What to report, in which form, and where to: a batch, a setup's season, or two side by side. The
// work runs beside the window, can be stopped, and never writes over a file unasked.
#pragma once

#include "ui/forms/form_dialog.h"
#include "ui/report/report_job.h"

#include <QStringList>

class QComboBox;
class QLabel;
class QPushButton;

namespace holdband::ui {

/// Of what there can be reports, and what is looked at: one name, or two.
struct ReportOffer {
    QStringList batches;
    QStringList setups;
    QStringList chosen;
    report::Counting counting = {}; ///< of those that are looked at
    bool us = false;                ///< Letter is its usual paper
};

class ReportDialog : public FormDialog {
    Q_OBJECT
public:
    ReportDialog(Session& session, const ReportOffer& offer, QWidget* parent = nullptr);

    QComboBox* of() const { return m_of; }
    QComboBox* beside() const { return m_beside; }
    QComboBox* formChoice() const { return m_form; }
    QComboBox* size() const { return m_size; }
    QComboBox* ground() const { return m_ground; }
    QLineEdit* file() const { return m_file; }
    ReportJob& job() { return m_job; }
    void reject() override;

Q_SIGNALS:
    /// What was written, in a sentence.
    void said(const QString& sentence);

protected:
    void save() override;

private:
    void offer(const ReportOffer& offer);
    QWidget* makeFileRow();
    void fitToForm();
    void suggestFile();
    void chooseFile();
    void takeEnd(const QString& problem);
    report::Wish wish() const;

    QStringList m_looked;
    report::Counting m_counting;
    ReportJob m_job{this};
    QComboBox* m_of;
    QComboBox* m_beside;
    QComboBox* m_form;
    QComboBox* m_size;
    QComboBox* m_ground;
    QLineEdit* m_file;
    QLabel* m_step;
    bool m_fileTyped = false;     ///< the name is the person's own
    bool m_leaving = false;       ///< closes as soon as the work has stopped
    QString m_replaceAgreed = {}; ///< the file that may be written over
};

} // namespace holdband::ui
