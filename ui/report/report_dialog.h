// Chooses what to report, in which form, and where to write it: a batch, a setup's season, or two
// side by side. The work runs on another thread, can be stopped, and never overwrites a file
// without asking.
#pragma once

#include "ui/forms/form_dialog.h"
#include "ui/report/report_job.h"

#include <QStringList>

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;

namespace holdband::ui {

/// The subjects available for reports, and those shown now: one name, or two.
struct ReportOffer {
    QStringList batches;
    QStringList setups;
    QStringList chosen;
    report::Counting counting = {};                          ///< for the subjects shown now
    std::optional<results::NextBatchRequest> nextBatch = {}; ///< the forecast shown now
    bool us = false;                                         ///< uses Letter paper by default
};

class PicturePreview;

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
    QCheckBox* openAfter() const { return m_openAfter; }
    ReportJob& job() { return m_job; }
    PicturePreview* preview() const { return m_preview; }
    void reject() override;

Q_SIGNALS:
    /// A sentence about what was written.
    void said(const QString& sentence);
    /// The file is written, and is to be shown by the desktop's program for it.
    void openWanted(const QString& path);

protected:
    void save() override;

private:
    void offer(const ReportOffer& offer);
    QWidget* makeFileRow();
    void fitToForm();
    void suggestFile();
    void chooseFile();
    void takeEnd(const QString& problem);
    report::ReportRequest request() const;
    bool isForecast() const;

    QStringList m_looked;
    report::Counting m_counting;
    std::optional<results::NextBatchRequest> m_nextBatch;
    ReportJob m_job{this};
    QComboBox* m_of;
    QComboBox* m_beside;
    QComboBox* m_form;
    QComboBox* m_size;
    QComboBox* m_ground;
    QLineEdit* m_file;
    QCheckBox* m_openAfter;
    PicturePreview* m_preview;
    QLabel* m_step;
    bool m_fileTyped = false;     ///< the name was typed by the user
    bool m_leaving = false;       ///< closes when the work has stopped
    QString m_replaceAgreed = {}; ///< the file that may be overwritten
};

} // namespace holdband::ui
