// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/start_page.h"

#include "app/chart/empty_chart.h"
#include "app/chart/palette.h"
#include "app/days/theme_inks.h"
#include "app/open_water/water_file.h"
#include "app/paper/small_picture.h"
#include "app/window/sample_water.h"
#include "app/wording/one_line.h"
#include "core/store/copies.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace window {

namespace {

constexpr std::size_t mostAtStart = 8; // the menu has the rest
constexpr QSize pictureSize{132, 84};
constexpr int cardWidth = 164;
constexpr int gap = 8;
constexpr int mostRows = 2; // are seen without scrolling

/// What stands below the picture: the name of the file is enough, its folder is in the tooltip.
QString shortWords(const WaterChoice& choice) {
    return choice.words == choice.path ? QFileInfo(choice.path).completeBaseName() : choice.words;
}

/// What can be told of a water without opening it.
struct Glimpse {
    QImage picture;
    QString name; ///< Empty where nobody has given it one.
};

void callButton(QToolButton& button, const QString& name) {
    button.setText(button.fontMetrics().elidedText(name, Qt::ElideMiddle, cardWidth - 2 * gap));
    button.setAccessibleName(name);
}

} // namespace

StartPage::StartPage(open_water::OpenWater& open, preferences::Preferences& preferences,
                     const store::Copies& copies, QWidget* parent)
    : QFrame(parent), open_(open), preferences_(preferences), copies_(copies),
      scroll_(new QScrollArea(this)) {
    setObjectName(QStringLiteral("startPage"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->addStretch(1);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    const auto add = [&](const QString& words, const QString& help) {
        auto* button = new QPushButton(words, this);
        button->setToolTip(help);
        row->addWidget(button);
        return button;
    };
    connect(add(tr("New water..."), tr("Choose where its file is to be (Ctrl+N)")),
            &QPushButton::clicked, this, &StartPage::newAsked);
    if (!sampleFiles(QCoreApplication::applicationDirPath()).isEmpty()) {
        connect(add(tr("The sample water"), tr("An invented reservoir of three survey days and two "
                                               "autumns, to try things out on")),
                &QPushButton::clicked, this, &StartPage::sampleAsked);
    }
    row->addStretch(1);
    column->addLayout(row);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setWidget(new QWidget(scroll_));
    scroll_->widget()->setObjectName(QStringLiteral("startWaters"));
    scroll_->widget()->setAutoFillBackground(false); // the paper shows through
    scroll_->viewport()->setAutoFillBackground(false);
    grid_ = new QGridLayout(scroll_->widget());
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setSpacing(gap);
    column->addWidget(scroll_);
    using open_water::OpenWater;
    connect(&open_, &OpenWater::opened, this, &StartPage::refresh);
    connect(&open_, &OpenWater::changed, this, &StartPage::refresh);
    connect(&open_, &OpenWater::glimpsed, this, &StartPage::hide);
    connect(&open_, &OpenWater::openingEnded, this, &StartPage::refresh);
    connect(&preferences_, &preferences::Preferences::lookChanged, this, &StartPage::refresh);
    refresh();
}

void StartPage::refresh() {
    if (open_.isOpen()) {
        pictures_.cancelAll();
        hide();
        return;
    }
    for (QWidget* card : std::exchange(cards_, {})) {
        card->hide();
        card->deleteLater();
    }
    const std::vector<WaterChoice> choices = waterChoices(preferences_, open_);
    for (std::size_t i = 0; i < std::min(choices.size(), mostAtStart); ++i) {
        cards_.append(makeCard(choices[i]));
    }
    scroll_->setVisible(!cards_.isEmpty());
    layWaters();
    show();
}

QWidget* StartPage::makeCard(const WaterChoice& choice) {
    auto* card = new QWidget(scroll_->widget());
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    auto* button = new QToolButton(card);
    button->setProperty("choice", "water");
    button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    button->setIconSize(pictureSize);
    button->setFixedWidth(cardWidth);
    callButton(*button, shortWords(choice));
    button->setAccessibleDescription(choice.path);
    button->setToolTip(choice.path);
    connect(button, &QToolButton::clicked, this, [this, path = choice.path] { emit chosen(path); });
    column->addWidget(button);
    if (!copies_.of(choice.path.toStdString()).empty()) {
        auto* back = new QToolButton(card);
        back->setText(tr("Go back..."));
        back->setAccessibleName(tr("Go back to a copy of %1").arg(shortWords(choice)));
        back->setToolTip(tr("Copies of this water, taken by the hour, day and week"));
        back->setFixedWidth(cardWidth);
        connect(back, &QToolButton::clicked, this,
                [this, path = choice.path] { emit goBackAsked(path); });
        column->addWidget(back);
    }
    column->addStretch(1);
    startPicture(button, choice.path);
    return card;
}

void StartPage::startPicture(QToolButton* button, const QString& path) {
    const chart::Inks inks = days::inksOf(preferences_.theme());
    QPixmap empty(pictureSize);
    empty.fill(chart::Palette::of(inks).paper);
    button->setIcon(QIcon(empty));
    pictures_.start<Glimpse>(
        tr("Drawing %1").arg(path),
        [path = path.toStdString(), inks](base::Progress& progress) -> base::Result<Glimpse> {
            const auto look = open_water::firstLookAt(path, progress);
            if (!look) {
                return std::unexpected(look.error());
            }
            return Glimpse{paper::renderSmallPicture(look->water, look->kept, pictureSize, inks),
                           wording::oneLine(look->water->name)};
        },
        [button = QPointer(button)](const base::Result<Glimpse>& glimpse) {
            // Without one the paper stays: why it cannot be read is said when it is opened.
            if (button && glimpse) {
                button->setIcon(QIcon(QPixmap::fromImage(glimpse->picture)));
                if (!glimpse->name.isEmpty()) {
                    callButton(*button, glimpse->name);
                }
            }
        });
}

void StartPage::layWaters() {
    if (cards_.isEmpty()) {
        return;
    }
    const int room =
        width() - layout()->contentsMargins().left() - layout()->contentsMargins().right() + gap;
    const int across = std::max(1, room / (cardWidth + gap));
    int tallest = 0;
    for (int i = 0; i < cards_.size(); ++i) {
        grid_->addWidget(cards_[i], i / across, i % across, Qt::AlignTop);
        cards_[i]->show();
        tallest = std::max(tallest, cards_[i]->sizeHint().height());
    }
    const int rows = (static_cast<int>(cards_.size()) + across - 1) / across;
    const int shown = std::min({rows, mostRows, std::max(1, height() / 2 / (tallest + gap))});
    scroll_->setFixedHeight(shown * (tallest + gap));
}

void StartPage::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    QPainter painter(this);
    chart::ChartContent content;
    content.inks = days::inksOf(preferences_.theme());
    content.typeScale = preferences_.typeScale();
    painter.fillRect(rect(), chart::Palette::of(content.inks).paper);
    const int above = layout()->itemAt(1)->geometry().top();
    chart::paintEmptyChart(painter, QRectF(0.0, 0.0, width(), above), content);
}

void StartPage::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    layWaters();
}

} // namespace window
