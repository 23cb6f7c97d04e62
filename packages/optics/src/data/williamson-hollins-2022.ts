// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Measured absorption a and scattering b per optical water type, 1/m. Source: Williamson & Hollins 2022, Applied Optics 61, 9951. */
export const WILLIAMSON_HOLLINS_2022 = {
  "IA": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 23 30-55 6"),
      "value_per_m": /* @__PURE__ */ unpack(4, 2, "123 111-212 387-49 2092-1865 669"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 8),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 23 30-55 6"),
      "value_per_m": /* @__PURE__ */ unpack(4, 1, "1175-118 52-154-73-173 36-5"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 8),
    },
  },
  "IB": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6"),
      "value_per_m": /* @__PURE__ */ unpack(7, 2, "433583-10500-131083 353416-99666-12667 2190750-1822750 690000"),
      "std_dev_per_m": /* @__PURE__ */ unpack(9, 2, "19199800-8037600 5108820-68650 811440 2874970-3357040 2552061-89339"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "6 6 6 6 2 6 4 4 4"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "141150-6225 2183-10508-39875 32817-8242 7000-19750"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, "472417-83599 13044-50013-132599 171681-238931 80885-2050"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "6 6 6 6 2 6 2 4 4"),
    },
  },
  "II": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(7, 1, "711873-54774-191318 146232 174053-15775 2237699 526520 1111250 5694240"),
      "std_dev_per_m": /* @__PURE__ */ unpack(8, 1, "2276060-451670 27540-938595 342465-380677-585022 977159-838867 1692927"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "32 2 3-3-18 18-14 12-1-28"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "204843-9714 1837-9714 11925-15416-17641-2614-18509-8761"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, "559738-20977-18801 16981 30612-38215 37469-67679 42624-158396"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "34 2-1 1-20 20-28 24 0-29"),
    },
  },
  "III": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(7, 1, "1278450-139900-320073 34903 60983-6882 2198399 537890 1177240 5363190"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, "312780-24657-58206-33357-73029 84487-37412 22792-15903 22375"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "77 2 0 0-47 47-35 29 0-21"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "320384-11550 14777-15463-50209 48158 4595-39704-21703-6005"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, "1204300-14350 146260-117680-275846 244096-171980 67720-119423-76607"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "76 2-7 7-45 45-37 30-1-19"),
    },
  },
  "1C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(7, 1, "1798810-213380-487770-45990 1920-62815 2151855 518300 1343440 5035630"),
      "std_dev_per_m": /* @__PURE__ */ unpack(8, 2, "3932500-560100-758520 885270-69550 652790-653056 828242 75144-1889770"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "32 2-1-1-15 16-17 15 0-8"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "462201-27352 11619-9142-53633 63296 29135-64274-30374 68483"),
      "std_dev_per_m": /* @__PURE__ */ unpack(6, 1, "157956-12746-3115-1529-16053 16694-59718 47864-10186-9920"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "32 1-1 1-16 16-18 16 0-8"),
    },
  },
  "3C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "234931-4151-78432-13225-735-20067 205517 51659 153141 475362"),
      "std_dev_per_m": /* @__PURE__ */ unpack(8, 0, "4837270 3896730 2869740 2252150 1424660 1628050 865968 1204890 2186650 0"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "30 1 2 0-21 21-12 12 0-5"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "663373-27526 5930 25732 102857-95013-57333 34234-63807 49035"),
      "std_dev_per_m": /* @__PURE__ */ unpack(6, 1, "198631 7084-3960-9744-81606 80348-5421-29563-277-19844"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, "31 3-1 1-23 23-12 11 1-5"),
    },
  },
  "5C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(6, 2, "436458-109558-4776 91071 4290 5341 399823-533843 286070 331927"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 0, "1747490 1039650 649215 514822 432042 331153 2511180 301525 635616 0"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "8 7 7 7 6 7 3 7 7 6"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 52-55 6 13"),
      "value_per_m": /* @__PURE__ */ unpack(5, 1, "110369-3121 16579 3018-17349 17156-16777 13801-16630 14905"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 2, "4356660-17670 1185890-4202960 5436940-4891320 331534 7143602-5866016-888660"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "7 7 8 7 6 7 3 8 7 7"),
    },
  },
  "7C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 72-69 13"),
      "value_per_m": /* @__PURE__ */ unpack(6, 2, "820060-174347-61439 180406 12213 4740 180187-38946 383659"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 9),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "412 28 20-26 0 1 72-69 13"),
      "value_per_m": /* @__PURE__ */ unpack(5, 1, "339927 164 7052 1747 846-13-4563-2527 1386"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 9),
    },
  },
};
