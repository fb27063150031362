// A report independent of its form: headings, paragraphs, lists, tables, figures. One composer for
// each subject fills it; one renderer for each form (PDF, HTML, CSV) shows it. Plain values.
// `text` is for people: in their language and the logbook's units. `raw` is for programs, in the
// units of the JSON answers; an id is English, is written down in a composer, and never changes.
#pragma once

#include "ui/charts/picture.h"

#include <QString>
#include <QStringList>
#include <memory>
#include <variant>
#include <vector>

namespace holdband::report {

using ui::Picture;
using ui::PictureLook;

struct Heading {
    QString text;
};

enum class Tone {
    lead, ///< the most important sentence
    plain,
    muted, ///< of secondary importance
};

struct Paragraph {
    QString text;
    Tone tone = Tone::plain;
    QString id = {};     ///< in the CSV, after "sentence."; empty: it is not included there
    QString figure = {}; ///< its name in the CSV
};

struct Bullets {
    QString id; ///< in the CSV, before ".sentence"
    QStringList items;
};

struct Cell {
    QString text; ///< The text for people.
    /// The value for programs: a number unrounded, an instant as RFC 3339; empty: the text.
    QString raw = {};
    QString unit = {}; ///< of `raw`, if it differs from the column's
    bool strong = false;
    /// Of a row's first cell: what is special about the row's figures ("sum"), or the fact's id.
    QString id = {};
};

struct Column {
    QString id; ///< of its figures, after the table's id and the row's
    QString title;
    QString unit = {}; ///< of the raw figures
    bool numeric = false;
    bool wide = false; ///< takes the remaining width, and wraps
    QString name = {}; ///< of the figures in the CSV, where the title names the logbook's unit
};

/// Where a table is shown; some figures are best shown to people in another shape than to programs.
enum class Shown { everywhere, onPages, amongFigures };

struct Table {
    QString id;                  ///< its figures' ids begin with it
    QString title;               ///< its name, for accessibility and in the CSV
    std::vector<Column> columns; ///< the first column names the row
    std::vector<std::vector<Cell>> rows;
    bool headerShown = true;
    Shown shown = Shown::everywhere;
    std::size_t mostRows = 100; ///< in PDF and HTML; the CSV has all rows
};

struct Figure {
    std::shared_ptr<const Picture> picture;
    QString title;
    QString alt; ///< its contents as text
    QString caption;
};

using Block = std::variant<Heading, Paragraph, Bullets, Table, Figure>;

/// A figure in large type, with its caption below.
struct LargeFigure {
    QString value;
    QString caption;
    bool warns = false;
};

struct Document {
    QString kind;  ///< "Report of a run"
    QString title; ///< the batch's name
    QString subtitle;
    QString headline; ///< the headline of a picture
    /// Above the headline of a picture, the first one largest; usually empty.
    std::vector<LargeFigure> largeFigures;
    /// Beside the figure of a picture, above it if the picture is upright; usually null.
    std::shared_ptr<const ui::Picture> glance;
    QString footer;  ///< logbook, program, date made
    bool us = false; ///< uses Letter paper by default
    std::vector<Block> blocks;

    void add(Block block) { blocks.push_back(std::move(block)); }
    /// The first figure; null if there is none.
    const Figure* figure() const;
};

/// The note below a table about the rows left out.
QString moreRows(std::size_t count);

} // namespace holdband::report
