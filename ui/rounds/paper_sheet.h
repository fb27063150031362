// Two weeks of rounds on paper: a line for each round, a column for each meter and thermometer, to
// be filled in by hand in front of them and typed later.
#pragma once

#include "core/problem.h"
#include "core/results/rounds/rounds_sheet.h"

#include <QString>
#include <QStringList>

class QPagedPaintDevice;
class QPainter;
class QRectF;

namespace holdband::ui {

/// What stands on the sheet, as words.
struct PaperSheet {
    QString title;       ///< "Rounds from 12 Mar 2026"
    QStringList columns; ///< "Loop meter, kWh"
    QStringList lines;   ///< "Thu 12 Mar · morning"
    QStringList last;    ///< what each column read last; an empty text where nothing did
};

/// The rounds of 14 days from the sheet's own day on.
PaperSheet paperSheet(const results::RoundsSheet& sheet);

/// Paints it on as many pages as its columns need.
void paintPaperSheet(const PaperSheet& sheet, QPagedPaintDevice& device, QPainter& painter);

/// Writes it as a PDF of A4, or of Letter where the logbook's units are US ones.
/// Problem (file): it can't be written; what stood there stays.
Done writePaperSheet(const results::RoundsSheet& sheet, const QString& path);

} // namespace holdband::ui
