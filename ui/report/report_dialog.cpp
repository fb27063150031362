#include "ui/report/report_dialog.h"

#include "ui/forms/choices.h"
#include "ui/forms/save_row.h"
#include "ui/report/picture_preview.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <array>

namespace holdband::ui {

namespace {

using report::Form;

struct FormWords {
    const char* words;
    const char* ending;
    Form form;
    QPageSize::PageSizeId paper = QPageSize::A4;
};

constexpr std::array forms{
    FormWords{QT_TRANSLATE_NOOP("Words", "PDF, A4"), "pdf", Form::pdf, QPageSize::A4},
    FormWords{QT_TRANSLATE_NOOP("Words", "PDF, Letter"), "pdf", Form::pdf, QPageSize::Letter},
    FormWords{QT_TRANSLATE_NOOP("Words", "Page (HTML, one file)"), "html", Form::html},
    FormWords{QT_TRANSLATE_NOOP("Words", "Figures (CSV)"), "csv", Form::csv},
    FormWords{QT_TRANSLATE_NOOP("Words", "Picture (PNG)"), "png", Form::png},
    FormWords{QT_TRANSLATE_NOOP("Words", "Picture as vectors (SVG)"), "svg", Form::svg},
};

struct SizeWords {
    const char* words;
    QSize size;
};

constexpr std::array sizes{
    SizeWords{QT_TRANSLATE_NOOP("Words", "1920 × 1080, for a video"), report::landscape},
    SizeWords{QT_TRANSLATE_NOOP("Words", "1080 × 1920, upright for a post"), report::portrait},
    SizeWords{QT_TRANSLATE_NOOP("Words", "1080 × 1080, square"), QSize(1080, 1080)},
};

const FormWords& formAt(const QComboBox* list)
{
    return forms.at(static_cast<std::size_t>(std::max(list->currentIndex(), 0)));
}

/// A file name from names that may contain anything: no separators, no control characters, not
/// hidden, not too long.
QString fileNameOf(const QStringList& names)
{
    QString name = names.join(Words::tr(" and ")).left(80);
    for (QChar& c : name) {
        if (!c.isLetterOrNumber() && !QStringLiteral(" ._-+()").contains(c))
            c = u'_';
    }
    name = name.trimmed();
    while (name.startsWith(u'.') || name.startsWith(u'-'))
        name.remove(0, 1);
    return name.isEmpty() ? Words::tr("report") : name;
}

} // namespace

ReportDialog::ReportDialog(Session& session, const ReportOffer& offered, QWidget* parent)
    : FormDialog(session, Words::tr("Report"), Words::tr("Save"), parent),
      m_of(makeChoice(Words::tr("Report of"), this)),
      m_beside(makeChoice(Words::tr("Side by side with"), this)),
      m_form(makeChoice(Words::tr("Format"), this)), m_size(makeChoice(Words::tr("Size"), this)),
      m_ground(makeChoice(Words::tr("Background"), this)), m_file(makeLine(Words::tr("File"))),
      m_openAfter(new QCheckBox(Words::tr("&Open it when it is written"), this)),
      m_preview(new PicturePreview(session, this)), m_step(makeLabel({}, "muted", this))
{
    addRow(Words::tr("&Report of"), m_of);
    addRow(Words::tr("&Side by side with"), m_beside);
    addRow(Words::tr("&Format"), m_form);
    addRow(Words::tr("Si&ze"), m_size);
    addRow(Words::tr("&Background"), m_ground);
    addRow(Words::tr("File"), makeFileRow());
    addRow(QString(), m_openAfter);
    m_openAfter->setChecked(true);
    addWide(m_preview);
    addWide(m_step);
    for (const FormWords& form : forms)
        m_form->addItem(Words::tr(form.words));
    for (const SizeWords& size : sizes)
        m_size->addItem(Words::tr(size.words));
    m_form->setCurrentIndex(offered.us ? 1 : 0);
    m_size->setMinimumContentsLength(30);
    m_ground->addItems({Words::tr("Light"), Words::tr("Dark")});
    offer(offered);
    for (QComboBox* list : {m_of, m_beside, m_form, m_size, m_ground})
        connect(list, &QComboBox::currentIndexChanged, this, &ReportDialog::fitToForm);
    connect(m_file, &QLineEdit::textEdited, this, [this] {
        m_fileTyped = true;
        foot()->reset();
    });
    connect(&m_job, &ReportJob::stepped, this,
            [this](const QString& step) { m_step->setText(capitalised(step) + u'…'); });
    connect(&m_job, &ReportJob::ended, this, &ReportDialog::takeEnd);
    fitToForm();
    m_of->setFocus();
}

QWidget* ReportDialog::makeFileRow()
{
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* choose = new QPushButton(Words::tr("&Choose…"), row);
    layout->addWidget(m_file, 1);
    layout->addWidget(choose);
    connect(choose, &QPushButton::clicked, this, &ReportDialog::chooseFile);
    return row;
}

void ReportDialog::offer(const ReportOffer& offered)
{
    m_beside->addItem(Words::tr("nothing"));
    m_nextBatch = offered.nextBatch;
    if (m_nextBatch)
        m_of->addItem(Words::tr("the next batch, as it is shown"));
    for (QComboBox* list : {m_of, m_beside}) {
        for (const QString& batch : offered.batches)
            list->addItem(batch, batch);
        for (const QString& setup : offered.setups)
            list->addItem(Words::tr("%1, all its batches").arg(setup), setup);
    }
    const auto choose = [](QComboBox* list, const QString& name) {
        list->setCurrentIndex(std::max(list->findData(name), 0));
    };
    m_looked = offered.chosen;
    m_counting = offered.counting;
    choose(m_of, offered.chosen.value(0));
    if (offered.chosen.size() > 1)
        choose(m_beside, offered.chosen[1]);
}

/// Size and background apply only to a picture; the file's name follows the choices.
void ReportDialog::fitToForm()
{
    const Form form = formAt(m_form).form;
    m_beside->setEnabled(!isForecast());
    m_size->setEnabled(form == Form::png || form == Form::svg);
    m_ground->setEnabled(m_size->isEnabled() || form == Form::html);
    foot()->reset();
    suggestFile();
    m_preview->show(request());
}

void ReportDialog::suggestFile()
{
    const QString ending = QString::fromLatin1(formAt(m_form).ending);
    if (m_fileTyped) { // only the extension of a name typed by the user is changed
        const QFileInfo typed(m_file->text());
        if (report::formNamed(core(m_file->text())))
            m_file->setText(QDir(typed.path()).filePath(typed.completeBaseName() + u'.' + ending));
        return;
    }
    QStringList names;
    for (const std::string& name : request().names)
        names << shown(name);
    if (isForecast())
        names << Words::tr("next batch");
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    m_file->setText(QDir(!folder.isEmpty() && QDir(folder).exists() ? folder : QDir::homePath())
                        .filePath(fileNameOf(names) + u'.' + ending));
}

void ReportDialog::chooseFile()
{
    const QString path =
        QFileDialog::getSaveFileName(this, Words::tr("Where the report goes"), m_file->text());
    if (path.isEmpty())
        return;
    m_fileTyped = true;
    m_replaceAgreed = path; // the file dialog has already asked
    m_file->setText(path);
    foot()->reset();
}

/// Its item has no name.
bool ReportDialog::isForecast() const
{
    return m_nextBatch && m_of->currentData().toString().isEmpty();
}

report::ReportRequest ReportDialog::request() const
{
    report::ReportRequest request;
    if (isForecast())
        request.nextBatch = m_nextBatch;
    else
        request.names.push_back(core(m_of->currentData().toString()));
    if (const QString other = m_beside->currentData().toString(); !other.isEmpty() && !isForecast())
        request.names.push_back(core(other));
    if (m_looked == QStringList{m_of->currentData().toString(), m_beside->currentData().toString()})
        request.counting = m_counting;
    request.form = formAt(m_form).form;
    if (request.form == Form::pdf)
        request.format.paper = QPageSize(formAt(m_form).paper);
    request.format.size =
        sizes.at(static_cast<std::size_t>(std::max(m_size->currentIndex(), 0))).size;
    request.format.scheme = m_ground->currentIndex() == 1 ? Scheme::dark : Scheme::light;
    request.path = core(QFileInfo(m_file->text().trimmed()).absoluteFilePath());
    return request;
}

void ReportDialog::save()
{
    if (m_job.running())
        return;
    QString path = m_file->text().trimmed();
    if (path.isEmpty() || path.endsWith(u'/'))
        return refuse(Words::tr("Say what the file is to be called."), m_file);
    if (report::formNamed(core(path)) != formAt(m_form).form)
        path += u'.' + QString::fromLatin1(formAt(m_form).ending);
    m_file->setText(path);
    report::ReportRequest wanted = request();
    if (QFileInfo(path).isFile()) {
        if (m_replaceAgreed != path) {
            m_replaceAgreed = path;
            return refuse(Words::tr("A file of that name already exists. Press “Save” again to "
                                    "replace it, or choose another name."),
                          m_file);
        }
        wanted.existing = exchange::Existing::replace;
    }
    foot()->setBusy(true);
    foot()->cancelButton()->setEnabled(true);
    m_job.start(session().path(), std::move(wanted));
}

void ReportDialog::takeEnd(const QString& problem)
{
    foot()->setBusy(false);
    m_step->clear();
    if (m_leaving)
        return QDialog::reject();
    if (!problem.isEmpty())
        return refuse(problem, m_file);
    const QString path = m_file->text().trimmed();
    Q_EMIT said(Words::tr("The report is written to %1.").arg(path));
    if (m_openAfter->isChecked())
        Q_EMIT openWanted(path);
    accept();
}

/// While working: stops the work, then closes.
void ReportDialog::reject()
{
    if (!m_job.running())
        return FormDialog::reject();
    m_leaving = true;
    m_job.stop();
    m_step->setText(Words::tr("Stopping…"));
}

} // namespace holdband::ui
