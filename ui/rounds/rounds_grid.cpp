#include "ui/rounds/rounds_grid.h"

#include "core/text/times.h"
#include "ui/rounds/correction_bar.h"
#include "ui/session/session.h"
#include "ui/theme/theme.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

namespace holdband::ui {

namespace {

/// Paints a cell as a box; missed: tinted with an open circle; corrected: underlined.
class CellDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override
    {
        const Colours& colours = coloursOf(option.palette);
        const bool missed = index.data(RoundsGridModel::MissedRole).toBool();
        const bool current = option.state.testFlag(QStyle::State_HasFocus);
        const QRectF box = QRectF(option.rect).adjusted(2.5, 2.5, -2.5, -2.5);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(current  ? QPen(colours.focus, 2.0)
                        : missed ? QPen(colours.excursion, 1.0)
                                 : QPen(colours.cardEdge, 1.0));
        painter->setBrush(missed ? colours.warnBack : colours.card);
        painter->drawRoundedRect(box, 3, 3);
        if (missed)
            drawCircle(*painter, box.center(), option.fontMetrics.height() / 4.0, colours);
        else
            drawText(*painter, box, index, colours);
        painter->restore();
    }

private:
    static void drawCircle(QPainter& painter, QPointF centre, double radius, const Colours& colours)
    {
        painter.setPen(QPen(colours.excursion, 1.6));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(centre, radius, radius);
    }

    static void drawText(QPainter& painter, const QRectF& box, const QModelIndex& index,
                         const Colours& colours)
    {
        const QString text = index.data().toString();
        painter.setPen(colours.text);
        painter.drawText(box, Qt::AlignCenter, text);
        if (!index.data(RoundsGridModel::CorrectedRole).toBool())
            return;
        painter.setPen(QPen(setupColour(4), 2.0));
        const double half = painter.fontMetrics().horizontalAdvance(text) / 2.0 + 2.0;
        painter.drawLine(QPointF(box.center().x() - half, box.bottom() - 3.0),
                         QPointF(box.center().x() + half, box.bottom() - 3.0));
    }
};

} // namespace

RoundsGrid::RoundsGrid(Session& session, QWidget* parent)
    : Card(Words::tr("The last 14 rounds"), parent), m_model(new RoundsGridModel(this)),
      m_table(new QTableView(this)), m_correction(new CorrectionBar(session, this)),
      m_session(&session), m_legend(makeLabel({}, "muted", this)),
      m_earlier(new QPushButton(Words::tr("Ea&rlier rounds"), this)),
      m_later(new QPushButton(Words::tr("Later rou&nds"), this))
{
    m_table->setModel(m_model);
    m_table->setItemDelegate(new CellDelegate(m_table));
    m_table->setShowGrid(false);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setAccessibleName(Words::tr("The last 14 rounds"));
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionMode(QAbstractItemView::NoSelection);
    m_table->setTabKeyNavigation(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->horizontalHeader()->setSectionsClickable(false);
    m_table->verticalHeader()->setSectionsClickable(false);
    m_table->verticalHeader()->setTextElideMode(Qt::ElideRight);
    m_table->setCornerButtonEnabled(false);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    contents()->addWidget(m_table);
    contents()->addLayout(makeFoot());
    contents()->addWidget(m_correction);
    m_table->installEventFilter(this);
    connect(m_table, &QTableView::doubleClicked, this, &RoundsGrid::open);
    connect(m_correction, &CorrectionBar::saved, this, &RoundsGrid::corrected);
    connect(m_table->horizontalScrollBar(), &QScrollBar::rangeChanged, this,
            &RoundsGrid::fitHeight);
    connect(m_correction, &CorrectionBar::typed, this, &RoundsGrid::moveOn);
    connect(m_correction, &CorrectionBar::closed, m_table, qOverload<>(&QWidget::setFocus));
}

QLayout* RoundsGrid::makeFoot()
{
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_legend, 1);
    foot->addWidget(m_earlier);
    foot->addWidget(m_later);
    m_earlier->setEnabled(false);
    m_later->setEnabled(false);
    connect(m_earlier, &QPushButton::clicked, this, [this] { turn(1); });
    connect(m_later, &QPushButton::clicked, this, [this] { turn(-1); });
    return foot;
}

QString RoundsGrid::legendText() const
{
    QStringList parts{
        Words::tr("Press Enter on a round to correct it, or to type one that was missed.")};
    if (m_model->anyCorrected())
        parts << Words::tr("Underlined: corrected, with what it was before.");
    if (m_model->anyMissed())
        parts << Words::tr("Open circle: missed.");
    return parts.join(QLatin1Char(' '));
}

/// To the next round of the row; from its end to the first round without a reading in the row
/// below.
void RoundsGrid::moveOn()
{
    const QModelIndex at = m_table->currentIndex();
    if (!at.isValid())
        return;
    if (at.column() + 1 < m_model->columnCount())
        return m_table->setCurrentIndex(at.siblingAtColumn(at.column() + 1));
    if (at.row() + 1 < m_model->rowCount())
        m_table->setCurrentIndex(
            m_model->index(at.row() + 1, std::max(0, m_model->firstEmpty(at.row() + 1))));
}

void RoundsGrid::turn(int sheets)
{
    m_sheetsBack = std::max(0, m_sheetsBack + sheets);
    Q_EMIT turned();
}

void RoundsGrid::clear()
{
    m_sheetsBack = 0;
    setSheet({});
}

bool RoundsGrid::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return Card::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (openTyped(key->text()))
        return true;
    const bool wanted =
        key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter || key->key() == Qt::Key_F2;
    if (!wanted || key->modifiers() != Qt::NoModifier)
        return Card::eventFilter(watched, event);
    open(m_table->currentIndex());
    return true;
}

/// A digit or a sign on a round begins its new value.
bool RoundsGrid::openTyped(const QString& text)
{
    const bool number =
        text.size() == 1 && (text[0].isDigit() || text[0] == u'-') && !m_session->readOnly();
    if (!number || !m_table->currentIndex().isValid())
        return false;
    open(m_table->currentIndex());
    m_correction->value()->setText(text);
    return true;
}

void RoundsGrid::open(const QModelIndex& index)
{
    if (!index.isValid() || m_session->readOnly())
        return;
    const results::RoundsSheet& sheet = m_model->sheet();
    const auto row = static_cast<std::size_t>(index.row());
    m_correction->take(sheet.rows[row], sheet.cells[row][static_cast<std::size_t>(index.column())],
                       sheet.zone);
}

void RoundsGrid::setSheet(results::RoundsSheet sheet)
{
    const QModelIndex at = m_table->currentIndex();
    const int row = at.row();
    const int column = at.column();
    m_earlier->setEnabled(sheet.hasEarlier);
    m_later->setEnabled(m_sheetsBack > 0);
    setTitle(m_sheetsBack > 0 ? Words::tr("14 earlier rounds") : Words::tr("The last 14 rounds"));
    setSecondaryText(sheet.columns.empty() ? QString()
                                           : QStringLiteral("%1 – %2").arg(
                                                 shown(dateText(sheet.columns.front().date)),
                                                 shown(dateText(sheet.columns.back().date))));
    m_model->setSheet(std::move(sheet));
    m_legend->setText(legendText());
    // Invalid if the cell no longer exists; initially the newest round.
    m_table->setCurrentIndex(at.isValid() ? m_model->index(row, column)
                                          : m_model->index(0, m_model->columnCount() - 1));
    fitSections();
}

/// Sections and their names grow with the text; a table that is too wide then scrolls.
void RoundsGrid::fitSections()
{
    int widest = 0;
    for (int column = 0; column < m_model->columnCount(); ++column) {
        const QString name =
            m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        for (const QString& line : name.split(QLatin1Char('\n')))
            widest = std::max(widest, fontMetrics().horizontalAdvance(line));
    }
    constexpr int between = 6;
    m_table->horizontalHeader()->setMinimumSectionSize(std::max(widest + between, 56));
    QHeaderView* rows = m_table->verticalHeader();
    rows->setDefaultSectionSize(fontMetrics().height() + 16);
    rows->setMaximumWidth(static_cast<int>(10.5 * fontMetrics().height())); // a shortened name
    fitHeight();
}

void RoundsGrid::fitHeight()
{
    const QHeaderView* rows = m_table->verticalHeader();
    const QScrollBar* bar = m_table->horizontalScrollBar();
    m_table->setFixedHeight(m_table->horizontalHeader()->sizeHint().height() +
                            rows->count() * rows->defaultSectionSize() + 6 +
                            (bar->maximum() > 0 ? bar->sizeHint().height() : 0));
    m_table->scrollTo(m_table->currentIndex());
}

} // namespace holdband::ui
