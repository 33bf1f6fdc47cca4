// Photos on pages: the JPEG's own bytes in PDF and SVG, its colours in PNG.
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <png.h>
#include <unistd.h>

#include "painting/picture.hpp"
#include "photos/jpeg_reader.hpp"
#include "photos/made_jpeg.hpp"
#include "photos/prepare.hpp"
#include "scene/drafting.hpp"

namespace tinworm::painting {
namespace {

namespace fs = std::filesystem;
namespace fixture = photos::fixture;

const Metadata metadata{
    .title = "Photos", .creator = "tinworm test", .date = "2025-04-12T00:00:00Z"};

scene::Photo photo_of(const photos::Pixels& pixels, scene::Area area) {
  return {area, fixture::made_jpeg(pixels), pixels.width_px, pixels.height_px};
}

// Two photos, one of them drawn twice, under a line and a word.
scene::Page page_with_photos() {
  scene::Page page;
  page.width_mm = 200;
  page.height_mm = 100;
  const scene::Photo colour = photo_of(fixture::quarters(160, 120), {10, 10, 80, 60});
  scene::Photo again = colour;
  again.area = {110, 80, 20, 15};
  const scene::Photo grey =
      photo_of(fixture::quarters(60, 90, {{20}, {90}, {160}, {230}}), {110, 10, 40, 60});
  page.layer("photos").items = {colour, grey, again};
  page.layer("over").items.push_back(
      scene::Shape{{scene::segment({10, 75}, {90, 75})}, {}, scene::Stroke{}});
  scene::Text text;
  text.text = "rear end";
  text.at = {10, 80};
  page.layer("over").items.push_back(text);
  return page;
}

const scene::Photo& photo(const scene::Page& page, std::size_t i) {
  return std::get<scene::Photo>(page.layers[0].items[i]);
}

std::size_t times(const std::string& part, const std::string& in) {
  std::size_t count = 0;
  for (std::size_t at = in.find(part); at != in.npos; at = in.find(part, at + 1)) ++count;
  return count;
}

class PaintedPhoto : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "tinworm-photo-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder = name;
  }
  void TearDown() override { fs::remove_all(folder); }

  std::string put(const std::string& name, const std::string& bytes) const {
    std::ofstream(folder / name, std::ios::binary) << bytes;
    return (folder / name).string();
  }
  static std::string text(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
  }
  std::string said(const std::string& command) const {
    const fs::path to = folder / "said";
    EXPECT_EQ(std::system((command + " >" + to.string() + " 2>&1").c_str()), 0) << text(to);
    return text(to);
  }

  fs::path folder;
};

photos::Pixels png_pixels(const std::string& bytes) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  if (png_image_begin_read_from_memory(&image, bytes.data(), bytes.size()) == 0) return {};
  image.format = PNG_FORMAT_RGB;
  photos::Pixels pixels{static_cast<int>(image.width), static_cast<int>(image.height), 3, {}};
  pixels.rows.resize(PNG_IMAGE_SIZE(image));
  png_image_finish_read(&image, nullptr, pixels.rows.data(), 0, nullptr);
  return pixels;
}

void expect_colour(const photos::Pixels& pixels, scene::At at_mm, double px_per_mm,
                   const fixture::Colour& colour) {
  const unsigned char* pixel =
      pixels.at(static_cast<int>(at_mm.x_mm * px_per_mm), static_cast<int>(at_mm.y_mm * px_per_mm));
  for (int c = 0; c < 3; ++c) {
    EXPECT_NEAR(pixel[c], colour[colour.size() == 1 ? 0 : c], 12)
        << at_mm.x_mm << " " << at_mm.y_mm << " channel " << c;
  }
}

void expect_the_page(const photos::Pixels& pixels, double px_per_mm) {
  struct {
    scene::At at_mm;
    fixture::Colour colour;
  } const places[] = {
      {{30, 25}, fixture::red},  {{70, 25}, fixture::green},
      {{30, 55}, fixture::blue}, {{70, 55}, fixture::white},
      {{11, 11}, fixture::red},  {{89, 69}, fixture::white},
      {{120, 20}, {20}},         {{140, 20}, {90}},
      {{120, 60}, {160}},        {{140, 60}, {230}},
      {{115, 83}, fixture::red}, {{125, 92}, fixture::white},
      {{9, 9}, {255}},           {{91, 40}, {255}},
      {{130, 71}, {255}},
  };
  for (const auto& place : places) expect_colour(pixels, place.at_mm, px_per_mm, place.colour);
}

TEST_F(PaintedPhoto, HasItsColoursAtItsPlaceInAPng) {
  for (const int width_px : {200, 800}) {
    expect_the_page(png_pixels(to_png(page_with_photos(), width_px, metadata)), width_px / 200.0);
  }
}

TEST_F(PaintedPhoto, StandsInAPdfByteForByteAndOnce) {
  const scene::Page page = page_with_photos();
  const std::string pdf = to_pdf({page, page}, metadata);
  EXPECT_EQ(times(photo(page, 0).jpeg, pdf), 1u) << "four times drawn";
  EXPECT_EQ(times(photo(page, 1).jpeg, pdf), 1u) << "twice drawn";
  const std::string path = put("photos.pdf", pdf);
  EXPECT_THAT(said("qpdf --check " + path),
              testing::HasSubstr("No syntax or stream encoding errors"));
  said("pdfimages -all " + path + " " + (folder / "out").string());
  EXPECT_EQ(text(folder / "out-000.jpg"), photo(page, 0).jpeg);
  EXPECT_EQ(text(folder / "out-001.jpg"), photo(page, 1).jpeg);
}

TEST_F(PaintedPhoto, LeavesTheRestOfAPdfInLinesAndLetters) {
  scene::Page page = page_with_photos();
  const std::string path = put("photos.pdf", to_pdf({page}, metadata));
  EXPECT_THAT(said("pdftotext " + path + " -"), testing::HasSubstr("rear end"));
  const std::string list = said("pdfimages -list " + path);
  EXPECT_EQ(times(" image ", list), 3u) << list;
  EXPECT_EQ(times(" jpeg ", list), 3u) << list;
  said("pdftoppm -r 101.6 -png " + path + " " + (folder / "page").string());  // 4 px per mm
  expect_the_page(png_pixels(text(folder / "page-1.png")), 4);
}

TEST_F(PaintedPhoto, StandsInAnSvgByteForByte) {
  const std::string svg = to_svg(page_with_photos(), metadata);
  EXPECT_EQ(svg, to_svg(page_with_photos(), metadata)) << "the same bytes twice";
  EXPECT_EQ(times("data:image/jpeg;base64,", svg), 2u) << "one is used twice";
  EXPECT_EQ(times("data:image/png", svg), 0u);
  const std::string path = put("photos.svg", svg);
  said("xmllint --noout " + path);
  const std::size_t from = svg.find("base64,") + 7;
  const std::string coded = put("coded", svg.substr(from, svg.find('"', from) - from));
  said("base64 -d " + coded);
  EXPECT_EQ(text(folder / "said"), photo(page_with_photos(), 0).jpeg);
  said("rsvg-convert -b white -w 800 " + path + " -o " + (folder / "svg.png").string());
  expect_the_page(png_pixels(text(folder / "svg.png")), 4);
}

TEST_F(PaintedPhoto, SameBytesTwice) {
  EXPECT_EQ(to_pdf({page_with_photos()}, metadata), to_pdf({page_with_photos()}, metadata));
  EXPECT_EQ(to_png(page_with_photos(), 300, metadata), to_png(page_with_photos(), 300, metadata));
}

TEST_F(PaintedPhoto, AsPreparedFromACameraIsUprightAndTellsNothing) {
  const std::string camera =
      fixture::made_jpeg(fixture::quarters(480, 360), {.segments = {fixture::exif(3)}});
  const auto prepared = photos::prepare(camera, {160, 90});
  ASSERT_TRUE(prepared);
  scene::Page page;
  page.width_mm = 100;
  page.height_mm = 80;
  page.layer("photos").items.push_back(
      scene::Photo{{10, 10, 80, 60}, prepared->jpeg, prepared->width_px, prepared->height_px});
  const std::string pdf = to_pdf({page}, metadata);
  EXPECT_EQ(times(prepared->jpeg, pdf), 1u);
  EXPECT_EQ(times("Exif", pdf) + times("Wherryflex", pdf), 0u);
  const photos::Pixels pixels = png_pixels(to_png(page, 400, metadata));
  expect_colour(pixels, {30, 25}, 4, fixture::white);
  expect_colour(pixels, {70, 55}, 4, fixture::red);
}

TEST_F(PaintedPhoto, ThatIsNoneOrLiesNowhereIsRefused) {
  const scene::Photo good = photo_of(fixture::quarters(16, 12), {10, 10, 16, 12});
  const auto changed = [&](auto change) {
    scene::Photo photo = good;
    change(photo);
    return photo;
  };
  const scene::Photo cases[] = {
      changed([](scene::Photo& photo) { photo.jpeg = "no picture"; }),
      changed([](scene::Photo& photo) { photo.jpeg.clear(); }),
      changed([](scene::Photo& photo) { photo.jpeg.resize(photo.jpeg.size() - 20); }),
      changed([](scene::Photo& photo) { photo.width_px = 12; }),
      changed([](scene::Photo& photo) { photo.area.width_mm = 0; }),
      changed([](scene::Photo& photo) { photo.area.height_mm = std::nan(""); }),
      changed([](scene::Photo& photo) { photo.area.x_mm = 1e7; }),
      changed([](scene::Photo& photo) {
        photo.area.height_mm = std::numeric_limits<double>::infinity();
      }),
  };
  for (const scene::Photo& photo : cases) {
    scene::Page page;
    page.layer("one").items.push_back(photo);
    EXPECT_THROW(to_png(page, 100, metadata), std::invalid_argument);
    EXPECT_THROW(to_pdf({page}, metadata), std::invalid_argument);
  }
}

}  // namespace
}  // namespace tinworm::painting
