// The row of pages below the lanes, with a line about the open subject beside it.
#pragma once

#include <QWidget>

class QButtonGroup;

namespace holdband::ui {

class ElidedLabel;

enum class PageId { rounds, run, sideBySide, nextBatch, equipment, imports };
inline constexpr int pageCount = 6;

QString pageTitle(PageId page);
/// The help page for a page.
QString helpFor(PageId page);

class PageRow : public QWidget {
    Q_OBJECT
public:
    explicit PageRow(QWidget* parent = nullptr);

    void setPage(PageId page);
    PageId page() const;
    void setSubtitle(const QString& words);

Q_SIGNALS:
    void pageChosen(holdband::ui::PageId page);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QButtonGroup* m_buttons;
    ElidedLabel* m_subtitle;
};

} // namespace holdband::ui
