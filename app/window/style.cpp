// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/style.h"

#include "app/chart/palette.h"

#include <QApplication>
#include <QFile>
#include <QFont>
#include <QPalette>
#include <QStyleFactory>

/// Resources of a static library must be asked for by name, outside of any namespace.
static void initDeskResources() {
    Q_INIT_RESOURCE(desk);
}

namespace window {

namespace {

constexpr int textSize = 10;

QPalette paletteOf(const chart::Palette& p) {
    QPalette palette;
    palette.setColor(QPalette::Window, p.card);
    palette.setColor(QPalette::WindowText, p.ink);
    palette.setColor(QPalette::Base, p.card);
    palette.setColor(QPalette::AlternateBase, p.paper);
    palette.setColor(QPalette::Text, p.ink);
    palette.setColor(QPalette::Button, p.paper);
    palette.setColor(QPalette::ButtonText, p.ink);
    palette.setColor(QPalette::Highlight, p.ink);
    palette.setColor(QPalette::HighlightedText, p.card);
    palette.setColor(QPalette::ToolTipBase, p.paper);
    palette.setColor(QPalette::ToolTipText, p.ink);
    palette.setColor(QPalette::PlaceholderText, p.faintInk);
    palette.setColor(QPalette::Disabled, QPalette::Text, p.faintInk);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, p.faintInk);
    return palette;
}

/// The style sheet with its colour words ("@ink") replaced from the palette.
QString sheetOf(const chart::Palette& p) {
    QFile file(QStringLiteral(":/desk/desk.qss"));
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    QString sheet = QString::fromUtf8(file.readAll());
    const QList<std::pair<QString, QColor>> words{
        {QStringLiteral("@faint"), p.faintInk}, {QStringLiteral("@ink"), p.ink},
        {QStringLiteral("@paper"), p.paper},    {QStringLiteral("@card"), p.card},
        {QStringLiteral("@rust"), p.rust},      {QStringLiteral("@plum"), p.plum},
        {QStringLiteral("@sand"), p.sand}};
    for (const auto& [word, colour] : words) {
        sheet.replace(word, colour.name());
    }
    return sheet;
}

} // namespace

void applyStyle(QApplication& app) {
    initDeskResources();
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSize(textSize);
    QApplication::setFont(font);
    const chart::Palette& palette = chart::Palette::screen();
    QApplication::setPalette(paletteOf(palette));
    app.setStyleSheet(sheetOf(palette));
}

} // namespace window
