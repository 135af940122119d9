// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/start_list.h"

#include <QDateTime>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace window {

namespace {

constexpr std::size_t mostAtStart = 8; // the menu has the rest

} // namespace

std::vector<WaterChoice> waterChoices(const preferences::Preferences& preferences,
                                      const open_water::OpenWater& open) {
    const auto& unnamed = open.unnamedWaters();
    QStringList paths = preferences.recentWaters();
    if (unnamed) {
        paths += unnamed->files();
    }
    paths.removeDuplicates();
    std::vector<WaterChoice> choices;
    for (const QString& path : paths) {
        const bool isUnnamed = unnamed && unnamed->holds(path);
        choices.push_back(
            {path, isUnnamed ? QObject::tr("Water without a name, of %1")
                                   .arg(QLocale(QLocale::English)
                                            .toString(QFileInfo(path).lastModified(),
                                                      QStringLiteral("ddd d MMM yyyy, HH:mm")))
                             : path});
    }
    return choices;
}

StartList::StartList(open_water::OpenWater& open, preferences::Preferences& preferences,
                     QWidget* parent)
    : QFrame(parent), open_(open), preferences_(preferences) {
    setObjectName(QStringLiteral("startList"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 10, 14, 10);
    column->setSpacing(2);
    using open_water::OpenWater;
    connect(&open_, &OpenWater::opened, this, &StartList::refresh);
    connect(&open_, &OpenWater::changed, this, &StartList::refresh);
    connect(&open_, &OpenWater::glimpsed, this, &StartList::hide);
    connect(&open_, &OpenWater::openingEnded, this, &StartList::refresh);
    refresh();
}

void StartList::refresh() {
    if (open_.isOpen()) {
        hide();
        return;
    }
    while (QLayoutItem* item = layout()->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
    const std::vector<WaterChoice> choices = waterChoices(preferences_, open_);
    auto* heading = new QLabel(tr("Open again"), this);
    heading->setProperty("voice", "heading");
    layout()->addWidget(heading);
    for (std::size_t i = 0; i < std::min(choices.size(), mostAtStart); ++i) {
        auto* button = new QToolButton(this);
        button->setText(choices[i].words);
        button->setToolTip(choices[i].path);
        connect(button, &QToolButton::clicked, this,
                [this, path = choices[i].path] { emit chosen(path); });
        layout()->addWidget(button);
    }
    setVisible(!choices.empty());
}

} // namespace window
