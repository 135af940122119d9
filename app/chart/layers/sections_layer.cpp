// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/sections_layer.h"

#include "app/chart/depth_colours.h"
#include "app/chart/lettering.h"
#include "app/chart/never_fished.h"
#include "app/chart/pointer_cache.h"
#include "app/chart/water_path.h"
#include "app/wording/one_line.h"
#include "app/wording/section_words.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <cmath>

namespace chart {

namespace {

/// True where all of the way from a to b runs along the shore: a straight border between two banks
/// has both its ends there.
bool runsAlong(const geo::Outline& shore, geo::WaterPoint a, geo::WaterPoint b, double near_m) {
    constexpr int parts = 4;
    for (int k = 0; k <= parts; ++k) {
        const double share = static_cast<double>(k) / parts;
        if (shore.distanceToShore_m(
                {std::lerp(a.x_m, b.x_m, share), std::lerp(a.y_m, b.y_m, share)}) >= near_m) {
            return false;
        }
    }
    return true;
}

/// The borders of the sections without what runs along the shore, which is drawn already.
std::vector<geo::Path> bordersOf(const sections::SectionMap& map, const geo::Outline* shore) {
    const double near_m = 1.2 * map.sectionOfCell.frame().cell_m();
    std::vector<geo::Path> borders;
    const auto addRing = [&](const geo::Ring& ring) {
        geo::Path run;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const geo::WaterPoint from = ring[i];
            const geo::WaterPoint to = ring[(i + 1) % ring.size()];
            if (shore != nullptr && runsAlong(*shore, from, to, near_m)) {
                borders.push_back(std::exchange(run, {}));
                continue;
            }
            if (run.empty()) {
                run.push_back(from);
            }
            run.push_back(to);
        }
        borders.push_back(std::move(run));
    };
    for (const sections::Section& section : map.sections) {
        for (const geo::Piece& piece : section.pieces) {
            addRing(piece.outer);
            std::for_each(piece.islands.begin(), piece.islands.end(), addRing);
        }
    }
    std::erase_if(borders, [](const geo::Path& run) { return run.size() < 2; });
    return borders;
}

std::shared_ptr<const std::vector<geo::Path>> bordersOf(const water::Derived& derived) {
    static PointerCache<sections::SectionMap, std::vector<geo::Path>> cache;
    return cache.of(derived.sections, [&derived](const sections::SectionMap& map) {
        return bordersOf(map, derived.outline.get());
    });
}

const sections::Section* selectedOf(const ChartContent& content) {
    const auto& all = content.derived.sections->sections;
    const int number = content.selection.section.value_or(-1);
    return number >= 0 && static_cast<std::size_t>(number) < all.size()
               ? &all[static_cast<std::size_t>(number)]
               : nullptr;
}

QString rateLine(const ChartContent& content, const std::string& name) {
    if (!content.rates || content.rates->by != water::ReviewBy::section) {
        return {};
    }
    const auto rate = content.rates->of(name);
    if (!rate || !content.rates->isTried(name)) {
        return wording::Tongue::tr("not fished");
    }
    return wording::Tongue::tr("%1 (%2 to %3)")
        .arg(wording::Words::rate(rate->per10RodHours), wording::Words::rate(rate->low),
             wording::Words::rate(rate->high));
}

/// As far before the first letter of a name as `gap`, in the direction that it is read.
QPointF beforeFirst(const std::vector<SetLetter>& letters, double gap) {
    const QPointF first = letters.front().middle;
    const QPointF way = letters.size() > 1 ? letters[1].middle - first : QPointF(1.0, 0.0);
    return first - gap / std::max(1.0, std::hypot(way.x(), way.y())) * way;
}

struct HowNamed {
    bool isSelected = false;
    bool isNeverFished = false;
};

/// True where all of the box lies in the section's own water, as far as its pixels can tell.
bool isWithin(const LayerContext& on, int section, const QRectF& box) {
    const grid::Grid<sections::SectionNumber>& of = on.content.derived.sections->sectionOfCell;
    for (const double x : {box.left(), box.center().x(), box.right()}) {
        for (const double y : {box.top(), box.center().y(), box.bottom()}) {
            const grid::Cell cell = of.frame().cellOf(on.view.toWater({x, y}));
            if (!of.frame().holds(cell) || of[cell] != section) {
                return false;
            }
        }
    }
    return true;
}

bool areWithin(const LayerContext& on, int section, const std::vector<QRectF>& boxes) {
    return std::ranges::all_of(boxes,
                               [&](const QRectF& box) { return isWithin(on, section, box); });
}

/// One section's name with what is said of it, as it is set.
struct SectionLabel {
    int position = 0; ///< In the map.
    QFont font;
    QString sign; ///< Before the name; may be empty.
    QString name;
    QString rate; ///< Below it; may be empty.
    Lettering colours;
    double rim = 0.0;
};

/// Along the middle of the section's water. \return false where it does not fit in there.
bool setOnSpine(LayerContext& on, const SectionLabel& label, const geo::Path& spine) {
    const auto letters = setAlong(screenLine(spine, on.view, 4.0 * on.scale), label.font,
                                  label.name, 1.0 * on.scale);
    std::vector<QRectF> boxes;
    for (const SetLetter& set : letters) {
        boxes.push_back(boxOf(label.font, QStringLiteral("n"), set.middle));
    }
    if (letters.empty() || !areWithin(on, label.position, boxes) || !on.labels.takeAll(boxes)) {
        return false;
    }
    drawLetters(on.painter, label.font, letters, label.colours, label.rim);
    if (!label.sign.isEmpty()) {
        drawText(on.painter, label.font, beforeFirst(letters, 10.0 * on.scale), label.sign,
                 label.colours, label.rim);
    }
    return true;
}

/// Level, about the middle of the section. \param mustBeWithin or it may stand over its neighbours.
/// \return false where there is no room.
bool setLevel(LayerContext& on, const SectionLabel& label, QPointF middle, bool mustBeWithin) {
    const double line = 14.0 * on.scale;
    for (const double shift : {0.0, -line, line, -2.0 * line, 2.0 * line}) {
        const QPointF at = middle + QPointF(0.0, shift);
        std::vector<QRectF> boxes{boxOf(label.font, label.sign + label.name, at)};
        if (!label.rate.isEmpty()) {
            boxes.push_back(boxOf(label.font, label.rate, at + QPointF(0.0, line)));
        }
        if ((mustBeWithin && !areWithin(on, label.position, boxes)) || !on.labels.takeAll(boxes)) {
            continue;
        }
        drawText(on.painter, label.font, at, label.sign + label.name, label.colours, label.rim);
        if (!label.rate.isEmpty()) {
            drawText(on.painter, label.font, at + QPointF(0.0, line), label.rate,
                     {on.palette.plum, on.palette.card}, label.rim);
        }
        return true;
    }
    return false;
}

/// In the section's own water the whole name, else its number, else nothing: at a small scale the
/// map is not drowned in names. What was chosen, or has a rate to be read, is named in any case
/// where no other letters stand.
void nameSection(LayerContext& on, int position, HowNamed how) {
    const sections::Section& section =
        on.content.derived.sections->sections[static_cast<std::size_t>(position)];
    SectionLabel label;
    label.position = position;
    label.font =
        typeface(TypeSize::small, on.scale, how.isSelected ? TypeStyle::bold : TypeStyle::slanted);
    label.rate = rateLine(on.content, section.name);
    label.sign = how.isNeverFished && label.rate.isEmpty() ? QString(neverFishedSign) : QString();
    label.name = wording::oneLine(wording::nameCalled(section.name).toStdString());
    label.colours = {how.isSelected ? on.palette.rust : on.palette.ink, on.palette.card};
    label.rim = 2.4 * on.scale;
    const QPointF middle = on.view.toScreen(section.middle);
    const bool isWanted = how.isSelected || !label.rate.isEmpty();
    if ((label.rate.isEmpty() && setOnSpine(on, label, section.spine)) ||
        setLevel(on, label, middle, !isWanted) || isWanted) {
        return;
    }
    label.name = QString::number(section.number);
    label.sign.clear();
    static_cast<void>(setLevel(on, label, middle, true));
}

} // namespace

void SectionsLayer::paint(LayerContext& on) const {
    if (!on.content.derived.sections) {
        return;
    }
    // Each border alone: one path of all of them is slow to stroke.
    std::vector<QPolygonF> lines;
    const auto borders = bordersOf(on.content.derived);
    for (const geo::Path& border : *borders) {
        if (meet(boxOf(border), on.view.box())) {
            lines.push_back(screenLine(border, on.view, on.scale));
        }
    }
    const auto penOf = [&](const QColor& colour, double width) {
        return QPen(colour, width * on.scale, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    };
    for (const QPen& pen :
         {penOf(mixed(on.palette.ink, on.palette.card, 0.15), 3.4), penOf(on.palette.card, 1.8)}) {
        on.painter.setPen(pen);
        for (const QPolygonF& line : lines) {
            on.painter.drawPolyline(line);
        }
    }
    if (const sections::Section* chosen = selectedOf(on.content)) {
        const QPainterPath path = screenPath(chosen->pieces, on.view);
        on.painter.strokePath(path, penOf(on.palette.card, 5.0));
        on.painter.strokePath(path, penOf(on.palette.rust, 2.6));
    }
}

void SectionsLayer::letter(LayerContext& on) const {
    if (!on.content.derived.sections) {
        return;
    }
    const std::vector<sections::Section>& all = on.content.derived.sections->sections;
    const std::vector<bool> never = neverFished(on.content);
    const auto name = [&](std::size_t i, bool isSelected) {
        nameSection(on, static_cast<int>(i), {isSelected, i < never.size() && never[i]});
    };
    const sections::Section* chosen = selectedOf(on.content);
    if (chosen != nullptr) {
        name(static_cast<std::size_t>(chosen - all.data()), true);
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (&all[i] != chosen && on.view.box().holds(all[i].middle)) {
            name(i, false);
        }
    }
}

} // namespace chart
