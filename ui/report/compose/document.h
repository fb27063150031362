// A report before it takes a form: headings, paragraphs, lists, tables, figures. One composer for
// each subject fills it; one renderer for each form (PDF, HTML, CSV) shows it. Plain values.
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
    lead, ///< the one sentence that matters
    plain,
    muted, ///< of second rank
};

struct Paragraph {
    QString text;
    Tone tone = Tone::plain;
    QString figure = {}; ///< its name among the figures (CSV); empty: it is not one of them
};

struct Bullets {
    QStringList items;
    bool numbered = false;
};

struct Cell {
    QString text; ///< as people read it
    /// As a program reads it: a number unrounded, an instant as RFC 3339; empty: the text.
    QString raw = {};
    QString unit = {}; ///< of `raw`, where it is not the column's
    bool strong = false;
};

struct Column {
    QString title;
    QString unit = {}; ///< of the raw figures
    bool numeric = false;
    bool wide = false; ///< takes the room that is left, and wraps
};

/// Where a table is shown; some figures read well in other shapes than programs take them.
enum class Shown { everywhere, onPages, amongFigures };

struct Table {
    QString title;               ///< what it is, for those who hear it and among the figures
    std::vector<Column> columns; ///< the first names the row
    std::vector<std::vector<Cell>> rows;
    bool headerShown = true;
    Shown shown = Shown::everywhere;
    std::size_t mostRows = 100; ///< on paper and page; the figures (CSV) have them all
};

struct Figure {
    std::shared_ptr<const Picture> picture;
    QString title;
    QString alt; ///< what it shows, in words
    QString caption;
};

using Block = std::variant<Heading, Paragraph, Bullets, Table, Figure>;

struct Document {
    QString kind;  ///< "Report of a run"
    QString title; ///< the batch's name
    QString subtitle;
    QString headline; ///< what a picture says on top
    QString footer;   ///< logbook, program, date made
    bool us = false;  ///< Letter is its usual paper
    std::vector<Block> blocks;

    void add(Block block) { blocks.push_back(std::move(block)); }
    /// The first of its figures; none: null.
    const Figure* figure() const;
};

/// What a table says of the rows that it leaves out.
QString moreRows(std::size_t count);

} // namespace holdband::report
