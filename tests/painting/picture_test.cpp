// Files in memory: the same twice, whole, and readable by other people's tools.
#include "painting/picture.hpp"

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <regex>
#include <thread>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include "painting/measure.hpp"
#include "scene/fixture.hpp"

namespace tinworm::painting {
namespace {

using testing::HasSubstr;
using testing::Not;

const Metadata metadata{.title = "Wherry 1200, survey of 2025-04-12",
                        .author = "S. Urveyor",
                        .subject = "Corrosion survey",
                        .creator = "tinworm test",
                        .date = "2025-04-12T00:00:00Z",
                        .description = "Verdict: repair & look < again",
                        .record = "[tinworm test: map]"};

std::vector<scene::Page> pages() {
  const auto survey = scene::fixture::busy_survey(scene::fixture::plan());
  return scene::diagram(scene::fixture::weighed(survey), {}, measure());
}

class Picture : public testing::Test {
 protected:
  void SetUp() override {
    folder = std::filesystem::temp_directory_path() /
             ("tinworm-picture-" + std::to_string(getpid()) + "-" +
              testing::UnitTest::GetInstance()->current_test_info()->name());
    std::filesystem::create_directories(folder);
  }
  void TearDown() override { std::filesystem::remove_all(folder); }

  std::string file(const std::string& name, const std::string& bytes) const {
    const auto path = (folder / name).string();
    std::ofstream(path, std::ios::binary) << bytes;
    return path;
  }

  // What the command prints; fails unless it exits with 0.
  static std::string run(const std::string& command) {
    FILE* const pipe = popen((command + " 2>&1").c_str(), "r");
    if (pipe == nullptr) {
      ADD_FAILURE() << "can't run " << command;
      return "";
    }
    std::string printed;
    char buffer[4096];
    while (fgets(buffer, sizeof buffer, pipe) != nullptr) printed += buffer;
    EXPECT_EQ(pclose(pipe), 0) << command << "\n" << printed;
    return printed;
  }

  std::filesystem::path folder;
};

TEST_F(Picture, SameBytesTwice) {
  const auto all = pages();
  EXPECT_EQ(to_pdf(all, metadata), to_pdf(all, metadata));
  EXPECT_EQ(to_svg(all[0], metadata), to_svg(all[0], metadata));
  EXPECT_EQ(to_png(all[0], 800, metadata), to_png(all[0], 800, metadata));
  EXPECT_EQ(to_pdf(pages(), metadata), to_pdf(all, metadata)) << "the scene itself";
}

TEST_F(Picture, SameBytesFromTwoThreads) {
  const auto all = pages();
  const std::string alone = to_svg(all[1], metadata) + to_pdf(all, metadata);
  std::string made[2];
  {
    const auto work = [&](std::string& to) {
      to = to_svg(all[1], metadata) + to_pdf(all, metadata);
    };
    std::jthread one(work, std::ref(made[0])), other(work, std::ref(made[1]));
  }
  EXPECT_EQ(made[0], alone);
  EXPECT_EQ(made[1], alone);
}

TEST_F(Picture, PdfIsSoundAndSearchable) {
  const auto all = pages();
  const std::string path = file("map.pdf", to_pdf(all, metadata));
  EXPECT_THAT(run("qpdf --check " + path), HasSubstr("No syntax or stream encoding errors"));
  const std::string fonts = run("pdffonts " + path);
  EXPECT_THAT(fonts, HasSubstr("DejaVuSans-Bold"));
  EXPECT_THAT(fonts, Not(HasSubstr(" no  no "))) << "every font is embedded";
  const std::string text = run("pdftotext -layout " + path + " -");
  EXPECT_THAT(text, HasSubstr("Not seen, so not known"));
  EXPECT_THAT(text, HasSubstr("car\u2019s left"));
  const std::string info = run("TZ=UTC pdfinfo " + path);
  EXPECT_THAT(info, HasSubstr("Wherry 1200, survey of 2025-04-12"));
  EXPECT_THAT(info, HasSubstr("tinworm test"));
  EXPECT_THAT(info, HasSubstr("Sat Apr 12 00:00:00 2025"));
  EXPECT_THAT(info, HasSubstr("841.89 x 595.276 pts (A4)"));
}

TEST_F(Picture, PdfHasItsDateOutlineLabelsAndLinks) {
  auto all = pages();
  all[0].links.push_back({{30, 30, 20, 5}, all[1].places.at(0).name});
  const std::string path = file("map.pdf", to_pdf(all, metadata));
  const std::string open = run("qpdf --qdf --object-streams=disable " + path + " -");
  EXPECT_THAT(open, HasSubstr("/CreationDate (D:20250412000000"));
  EXPECT_THAT(open, HasSubstr("/ModDate (D:20250412000000"));
  EXPECT_THAT(open, HasSubstr("/Outlines"));
  EXPECT_THAT(open, HasSubstr("/PageLabels"));
  EXPECT_THAT(open, HasSubstr("/Subtype /Link"));
}

TEST_F(Picture, PdfHasItsDateInAnyCentury) {
  Metadata old = metadata;
  old.date = "1999-11-03T00:00:00Z";
  const std::string path = file("old.pdf", to_pdf(pages(), old));
  run("qpdf --check " + path);
  EXPECT_THAT(run("qpdf --qdf --object-streams=disable " + path + " -"),
              HasSubstr("/CreationDate (D:19991103000000"));
}

TEST_F(Picture, SvgIsWellFormedAndSaysWhatItIs) {
  const std::string svg = to_svg(pages()[0], metadata);
  const std::string path = file("map.svg", svg);
  run("xmllint --noout " + path);
  EXPECT_THAT(svg, HasSubstr("<title>Wherry 1200, survey of 2025-04-12</title>"));
  EXPECT_THAT(svg, HasSubstr("Verdict: repair &amp; look &lt; again"));
  EXPECT_THAT(svg, HasSubstr("\nRecord: [tinworm test: map]\n"));
  run("rsvg-convert -w 600 " + path + " -o " + (folder / "map.png").string());
  EXPECT_GT(std::filesystem::file_size(folder / "map.png"), 10'000U);
}

// SVG 1.1, 14.3.5: the rule counts on what stands inside the clip, not where the clip is used.
TEST_F(Picture, SvgClipsHaveTheirRuleWhereItCounts) {
  const std::string svg = to_svg(pages()[0], metadata);
  const std::regex used("clip-path=\"url\\(#([a-z0-9]+)\\)\" clip-rule=\"(evenodd|nonzero)\"");
  std::size_t even_odd = 0;
  for (std::sregex_iterator each(svg.begin(), svg.end(), used), end; each != end; ++each) {
    const std::string clip = "<clipPath id=\"" + (*each)[1].str() + "\">\n  <path ";
    const std::size_t at = svg.find(clip);
    ASSERT_NE(at, std::string::npos) << clip;
    const bool ruled = svg.compare(at + clip.size(), 20, "clip-rule=\"evenodd\" ") == 0;
    EXPECT_EQ(ruled, (*each)[2] == "evenodd") << clip;
    even_odd += (*each)[2] == "evenodd";
  }
  EXPECT_GT(even_odd, 10U);
}

TEST_F(Picture, PngHasItsSizeAndText) {
  const std::string png = to_png(pages()[0], 1200, metadata);
  ASSERT_EQ(png.substr(0, 8), "\x89PNG\r\n\x1a\n");
  const auto number = [&](std::size_t at) {
    unsigned value = 0;
    for (std::size_t i = 0; i < 4; ++i)
      value = value << 8 | static_cast<unsigned char>(png[at + i]);
    return value;
  };
  EXPECT_EQ(number(16), 1200U);
  EXPECT_EQ(number(20), 848U);  // 1200 x 210 / 297
  EXPECT_THAT(png, HasSubstr("pHYs"));
  EXPECT_THAT(png, HasSubstr("Verdict: repair & look < again"));
}

TEST_F(Picture, WhatCannotBeDrawnIsRefused) {
  using scene::Shape;
  const auto page_with = [](scene::Item item) {
    scene::Page page;
    page.layer("one").items.push_back(std::move(item));
    return page;
  };
  scene::Text text;
  text.text = "\xff";
  EXPECT_THROW(to_svg(page_with(text), metadata), std::invalid_argument);
  text.text = "two\nlines";
  EXPECT_THROW(to_svg(page_with(text), metadata), std::invalid_argument);
  const Shape far{{scene::segment({0, 0}, {1e7, 0})}, {}, scene::Stroke{}};
  EXPECT_THROW(to_svg(page_with(far), metadata), std::invalid_argument);
  const Shape no_number{{scene::segment({0, 0}, {std::nan(""), 0})}, {}, scene::Stroke{}};
  EXPECT_THROW(to_png(page_with(no_number), 100, metadata), std::invalid_argument);
  EXPECT_THROW(to_png(scene::Page{}, 0, metadata), std::invalid_argument);
  EXPECT_THROW(to_png(scene::Page{}, 30'000, metadata), std::invalid_argument);
  EXPECT_THROW(to_pdf({}, metadata), std::invalid_argument);
  scene::Page page;
  page.links.push_back({{0, 0, 1, 1}, "nowhere"});
  EXPECT_THROW(to_pdf({page}, metadata), std::invalid_argument);
}

TEST_F(Picture, LettersThatThePackagedFontsLackAreReported) {
  scene::Page page;
  scene::Text text;
  text.at = {10, 10};
  text.text = "\u8eca";  // a Han character
  page.layer("one").items.push_back(text);
  Warnings warnings;
  to_pdf({page}, metadata, &warnings);
  ASSERT_EQ(warnings.size(), 1U);
  EXPECT_THAT(warnings[0], HasSubstr("\u8eca"));
}

TEST(Measure, IsTheSameAsTheFontsOwnFigures) {
  // DejaVu Sans 2.37: digits advance 1303 of 2048 units, ascent 1901, descent 483 (its hhea table).
  const scene::Extent extent = measure()("51", scene::Font::regular, 6.5);
  EXPECT_NEAR(extent.width_mm, 2 * 1303.0 / 2048 * 6.5 * scene::mm_per_pt, 0.002);
  EXPECT_NEAR(extent.ascent_mm, 1901.0 / 2048 * 6.5 * scene::mm_per_pt, 0.002);
  EXPECT_NEAR(extent.descent_mm, 483.0 / 2048 * 6.5 * scene::mm_per_pt, 0.002);
}

}  // namespace
}  // namespace tinworm::painting
