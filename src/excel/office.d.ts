/// <reference path="../../node_modules/@microsoft/office-js/dist/office.d.ts" />
