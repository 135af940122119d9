// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/palette.h"

#include <QFile>
#include <QStringList>
#include <QTextStream>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

// The resource lies in a static library: it must be asked for by name, outside any namespace.
static void bringColours() {
    Q_INIT_RESOURCE(colours);
}

namespace chart {

namespace {

/// The words of every line that is neither empty nor a remark.
std::vector<QStringList> linesOf(const QString& name) {
    bringColours();
    QFile file(QStringLiteral(":/colours/") + name);
    std::vector<QStringList> lines;
    if (!file.open(QIODevice::ReadOnly | QIODevice::Text)) {
        qFatal("the colours are missing from the program");
    }
    QTextStream text(&file);
    while (!text.atEnd()) {
        const QString line = text.readLine().simplified();
        if (!line.isEmpty() && !line.startsWith(QLatin1String("# "))) {
            lines.push_back(line.split(QLatin1Char(' ')));
        }
    }
    return lines;
}

/// The file of the depth ramp.
QString rampOf(Inks inks) {
    switch (inks) {
    case Inks::light:
        return QStringLiteral("depth.txt");
    case Inks::dark:
        return QStringLiteral("depth-dark.txt");
    case Inks::highContrast:
        return QStringLiteral("depth-contrast.txt");
    case Inks::grey:
        return QStringLiteral("depth-grey.txt");
    }
    return {};
}

} // namespace

Palette::Palette(Inks inksOf) {
    for (const QStringList& line : linesOf(rampOf(inksOf))) {
        ramp_.push_back({line.at(0).toDouble(),
                         {line.at(1).toDouble(), line.at(2).toDouble(), line.at(3).toDouble()}});
    }
    std::map<QString, QColor> inks;
    for (const QStringList& line : linesOf(QStringLiteral("inks.txt"))) {
        inks[line.at(0)] = QColor(line.at(1 + static_cast<int>(inksOf)));
    }
    const auto named = [&inks](const char* name) { return inks.at(QLatin1String(name)); };
    ink = named("ink");
    faintInk = named("faintInk");
    paper = named("paper");
    card = named("card");
    field = named("field");
    edge = named("edge");
    rust = named("rust");
    plum = named("plum");
    reed = named("reed");
    weed = named("weed");
    sand = named("sand");
    bed = named("bed");
    water = named("water");
    shallower_ = named("shallower");
    deeper_ = named("deeper");
}

const Palette& Palette::of(Inks inks) {
    static const std::array<Palette, allInks.size()> all{Palette(Inks::light), Palette(Inks::dark),
                                                         Palette(Inks::highContrast),
                                                         Palette(Inks::grey)};
    return all[static_cast<std::size_t>(inks)];
}

QColor Palette::depthAt(double share) const {
    const double held = std::clamp(share, ramp_.front().share, ramp_.back().share);
    const auto above = std::find_if(ramp_.begin() + 1, ramp_.end() - 1,
                                    [held](const Stop& stop) { return stop.share >= held; });
    const Stop& to = *above;
    const Stop& from = *(above - 1);
    const double t = (held - from.share) / (to.share - from.share);
    const auto between = [t](double a, double b) { return a + t * (b - a); };
    return colourFrom(chart::srgbFrom(Oklch{between(from.colour.lightness, to.colour.lightness),
                                            between(from.colour.chroma, to.colour.chroma),
                                            between(from.colour.hue_deg, to.colour.hue_deg)}));
}

QColor Palette::band(std::size_t index, std::size_t count) const {
    return depthAt((static_cast<double>(index) + 0.5) /
                   static_cast<double>(std::max<std::size_t>(count, 1)));
}

QColor Palette::difference(double share) const {
    const double held = std::clamp(share, -1.0, 1.0);
    return mixed(paper, held < 0.0 ? shallower_ : deeper_, std::abs(held));
}

Lettering Palette::lettersOn(const QColor& ground) const {
    constexpr double forText = 4.6; // a little more than 4.5, for the rounding to 8 bits
    const double ofInk = contrast(chart::srgbFrom(ink), chart::srgbFrom(ground));
    if (ofInk >= forText) {
        return {ink, ground};
    }
    if (contrast(chart::srgbFrom(card), chart::srgbFrom(ground)) >= forText) {
        return {card, ground};
    }
    for (double share = 0.05; share < 1.0; share += 0.05) {
        const QColor lighter = mixed(ground, card, share);
        if (contrast(chart::srgbFrom(ink), chart::srgbFrom(lighter)) >= forText) {
            return {ink, lighter};
        }
    }
    return {ink, card};
}

Srgb srgbFrom(const QColor& colour) {
    return {static_cast<double>(colour.redF()), static_cast<double>(colour.greenF()),
            static_cast<double>(colour.blueF())};
}

QColor colourFrom(const Srgb& colour) {
    const auto whole = [](double part) { return static_cast<int>(std::lround(part * 255.0)); };
    return {whole(colour.red), whole(colour.green), whole(colour.blue)};
}

QColor mixed(const QColor& a, const QColor& b, double share) {
    const Srgb one = srgbFrom(a);
    const Srgb other = srgbFrom(b);
    const auto between = [share](double x, double y) { return x + share * (y - x); };
    return colourFrom({between(one.red, other.red), between(one.green, other.green),
                       between(one.blue, other.blue)});
}

QColor withAlpha(QColor colour, double alpha) {
    colour.setAlphaF(static_cast<float>(std::clamp(alpha, 0.0, 1.0)));
    return colour;
}

} // namespace chart
