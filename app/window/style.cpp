// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/style.h"

#include "app/chart/palette.h"
#include "app/days/theme_inks.h"
#include "app/widgets/ink_roles.h"

#include <QApplication>
#include <QFile>
#include <QFont>
#include <QPainter>
#include <QPalette>
#include <QProxyStyle>
#include <QStyleOption>

/// Resources of a static library must be asked for by name, outside of any namespace.
static void initDeskResources() {
    Q_INIT_RESOURCE(desk);
}

namespace window {

namespace {

constexpr auto styledKey = "isPaperAndInk";
constexpr double textSize = 10.0;
constexpr double barShade = 0.5;  // of the ramp; 3 on the card in each theme
constexpr double nameSize = 15.0; // of the water's name

/// Fusion draws the edges of boxes from the ground, hardly darker than it: here they are the edge
/// of the theme, so that each can be made out (3 of WCAG 2.2, 1.4.11).
class PaperStyle : public QProxyStyle {
public:
    PaperStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget) const override {
        QProxyStyle::drawComplexControl(control, option, painter, widget);
        if (control == CC_ComboBox || control == CC_SpinBox) {
            drawEdge(*painter, *option, QRectF(option->rect));
        } else if (control == CC_Slider) {
            drawEdge(*painter, *option,
                     QRectF(proxy()->subControlRect(CC_Slider, option, SC_SliderHandle, widget)));
        }
    }
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
        if (element == PE_IndicatorCheckBox) {
            drawEdge(*painter, *option, QRectF(option->rect));
        }
    }

private:
    static void drawEdge(QPainter& painter, const QStyleOption& option, const QRectF& box) {
        const bool hasFocus = option.state.testFlag(State_HasFocus);
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(option.palette.color(hasFocus ? widgets::inkRole : widgets::edgeRole),
                            hasFocus ? 2.0 : 1.0));
        painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 2.0, 2.0);
        painter.restore();
    }
};

QPalette paletteOf(const chart::Palette& p) {
    QPalette palette;
    palette.setColor(QPalette::Window, p.card);
    palette.setColor(QPalette::WindowText, p.ink);
    palette.setColor(QPalette::Base, p.field);
    palette.setColor(QPalette::AlternateBase, p.paper);
    palette.setColor(QPalette::Text, p.ink);
    palette.setColor(QPalette::Button, p.paper);
    palette.setColor(QPalette::ButtonText, p.ink);
    palette.setColor(QPalette::Highlight, p.ink);
    palette.setColor(QPalette::HighlightedText, p.card);
    palette.setColor(QPalette::ToolTipBase, p.paper);
    palette.setColor(QPalette::ToolTipText, p.ink);
    palette.setColor(widgets::faintRole, p.faintInk);
    palette.setColor(widgets::warningRole, p.rust);
    palette.setColor(widgets::rodsRole, p.plum);
    palette.setColor(widgets::weedRole, p.reed);
    palette.setColor(widgets::barRole, p.depthAt(barShade));
    palette.setColor(widgets::sandRole, p.sand);
    palette.setColor(widgets::edgeRole, p.edge);
    palette.setColor(QPalette::Disabled, QPalette::Text, p.faintInk);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, p.faintInk);
    return palette;
}

/// The style sheet with its colour words ("@ink") replaced from the palette.
QString sheetOf(const chart::Palette& p, double typeScale) {
    QFile file(QStringLiteral(":/desk/desk.qss"));
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    QString sheet = QString::fromUtf8(file.readAll());
    const QList<std::pair<QString, QColor>> words{
        {QStringLiteral("@faint"), p.faintInk}, {QStringLiteral("@ink"), p.ink},
        {QStringLiteral("@paper"), p.paper},    {QStringLiteral("@card"), p.card},
        {QStringLiteral("@rust"), p.rust},      {QStringLiteral("@plum"), p.plum},
        {QStringLiteral("@sand"), p.sand},      {QStringLiteral("@field"), p.field},
        {QStringLiteral("@edge"), p.edge}};
    sheet.replace(QStringLiteral("@nameSize"),
                  QStringLiteral("%1pt").arg(nameSize * typeScale, 0, 'f', 1));
    for (const auto& [word, colour] : words) {
        sheet.replace(word, colour.name());
    }
    return sheet;
}

} // namespace

void applyStyle(QApplication& app, preferences::Theme theme, double typeScale) {
    initDeskResources();
    if (!app.property(styledKey).toBool()) { // once: it draws in the colours of each palette
        QApplication::setStyle(new PaperStyle);
        app.setProperty(styledKey, true);
    }
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(textSize * typeScale);
    QApplication::setFont(font);
    const chart::Palette& palette = chart::Palette::of(days::inksOf(theme));
    QApplication::setPalette(paletteOf(palette));
    app.setStyleSheet(sheetOf(palette, typeScale));
}

} // namespace window
