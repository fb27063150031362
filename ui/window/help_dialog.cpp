#include "ui/window/help_dialog.h"

#include "ui/window/limits_table.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QPushButton>
#include <QTextBrowser>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

namespace holdband::ui {

namespace {

const QString contents = QStringLiteral("contents.md");
constexpr int tallest = 680;
constexpr int titleBar = 40; // with some space around it

/// In the language of the texts if that page exists, else in English.
QString markdownOf(const QString& page)
{
    const QString language = wordsLocale().name().section(u'_', 0, 0);
    for (const QString& folder : {language + u'/', QString()}) {
        QFile file(QStringLiteral(":/help/") + folder + page);
        if (file.open(QIODevice::ReadOnly))
            return QString::fromUtf8(file.readAll())
                .replace(QStringLiteral("%limits%"), limitsTable());
    }
    return {};
}

} // namespace

HelpDialog::HelpDialog(QWidget* parent) : QDialog(parent), m_text(new QTextBrowser(this))
{
    setWindowTitle(Words::tr("Help"));
    const int room = parent ? parent->height() - 2 * titleBar : tallest;
    resize(640, std::min(tallest, std::max(room, 320)));
    m_text->setOpenLinks(false);
    m_text->setAccessibleName(Words::tr("Help"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* all = buttons->addButton(Words::tr("&All pages"), QDialogButtonBox::ActionRole);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_text, 1);
    layout->addWidget(buttons);
    connect(m_text, &QTextBrowser::anchorClicked, this, &HelpDialog::follow);
    connect(all, &QPushButton::clicked, this, [this] { showPage(contents); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    showPage(contents);
}

void HelpDialog::showPage(const QString& page)
{
    const QString text = markdownOf(page);
    m_page = text.isEmpty() ? contents : page;
    m_text->setMarkdown(text.isEmpty() ? markdownOf(contents) : text);
    m_text->moveCursor(QTextCursor::Start);
    m_text->setFocus();
}

void HelpDialog::follow(const QUrl& link)
{
    showPage(link.fileName());
}

QString helpFor(const QDialog& dialog)
{
    const std::pair<const char*, const char*> pages[] = {
        {"Meter", "meters.md"},     {"Sensor", "sensors.md"}, {"Setup", "equipment.md"},
        {"Prices", "equipment.md"}, {"Round", "rounds.md"},   {"Readings", "sensors.md"},
        {"Batch", "run.md"},        {"Cause", "run.md"},      {"Chart", "run.md"},
    };
    const QString kind = QString::fromLatin1(dialog.metaObject()->className());
    for (const auto& [part, page] : pages) {
        if (kind.contains(QLatin1String(part)))
            return QString::fromLatin1(page);
    }
    return contents;
}

void openHelp(QWidget& window, const QString& page)
{
    auto* help = window.findChild<HelpDialog*>();
    if (!help) {
        help = new HelpDialog(&window);
        help->setAttribute(Qt::WA_DeleteOnClose);
    }
    help->showPage(page);
    help->show();
    help->raise();
    help->activateWindow();
}

} // namespace holdband::ui
