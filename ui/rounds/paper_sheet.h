// A paper form for two weeks of rounds: a row for each round, a column for each meter and
// thermometer, to be filled in by hand and typed later.
#pragma once

#include "core/problem.h"
#include "core/results/rounds/rounds_sheet.h"

#include <QString>
#include <QStringList>

class QPagedPaintDevice;
class QPainter;
class QRectF;

namespace holdband::ui {

/// The contents of the form as text.
struct PaperSheet {
    QString title;       ///< "Rounds from 12 Mar 2026"
    QStringList columns; ///< "Loop meter, kWh"
    QStringList lines;   ///< "Thu 12 Mar · morning"
    QStringList last;    ///< the last reading of each column; empty if there is none
};

/// The rounds of 14 days, from the day of `sheet` on.
PaperSheet paperSheet(const results::RoundsSheet& sheet);

/// Paints it on as many pages as the columns need.
void paintPaperSheet(const PaperSheet& sheet, QPagedPaintDevice& device, QPainter& painter);

/// Writes it as a PDF of A4, or of Letter for US units. Problem (file): it can't be written; an
/// existing file is unchanged.
Done writePaperSheet(const results::RoundsSheet& sheet, const QString& path);

} // namespace holdband::ui
